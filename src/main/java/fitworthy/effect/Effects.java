package fitworthy.effect;

import fitworthy.advice.View;
import fitworthy.batch.InOrder;
import fitworthy.batch.Input;
import fitworthy.batch.Inputs;
import fitworthy.batch.Refusal;
import fitworthy.effect.Difference.What;
import fitworthy.engine.BudgetExceeded;
import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.LongConsumer;

/**
 * What a change of practice does to many sheets. What comes out otherwise stands in the journal, not in memory, and is
 * read again to be printed.
 */
public final class Effects implements Closeable {

    private final View before;
    private final View after;
    private final Journal journal;
    private final List<Listed> changed = new ArrayList<>();
    private final List<Listed> bad = new ArrayList<>();
    private final Map<What, Integer> counts = new EnumMap<>(What.class);
    private final Map<String, Rule> rules = new TreeMap<>();
    private int sheets;
    private int verdicts;
    private boolean oursAtFault;

    /** A sheet to be printed, and where the journal has it. */
    private record Listed(String sheet, Journal.Span span) {}

    /** A sheet looked at. @param span where an earlier run has it, else its {@code line} is still to be written */
    private record Looked(SheetEffect effect, Optional<Journal.Span> span, String line, boolean ourFault) {}

    /** How often a rule comes out otherwise. */
    public static final class Rule {
        private final Map<What, Integer> counts = new EnumMap<>(What.class);
        private int sheets;

        public Map<What, Integer> counts() {
            return counts;
        }

        public int sheets() {
            return sheets;
        }
    }

    private Effects(View before, View after, Journal journal) {
        this.before = before;
        this.after = after;
        this.journal = journal;
    }

    /**
     * Looks at every sheet from both sides.
     *
     * @param journal the file that remembers finished sheets, or null
     * @param progress told how many sheets are done
     * @throws FaultsException where the journal's file is something else or in use
     * @throws IOException where it cannot be opened
     * @throws JournalNotWritten where it cannot be written
     */
    public static Effects of(View before, View after, Inputs inputs, Path journal, int jobs, LongConsumer progress)
            throws FaultsException, IOException {
        Effects effects = new Effects(before, after, Journal.open(journal, before, after));
        try {
            InOrder.run(
                    inputs,
                    effects::look,
                    looked -> {
                        effects.count(looked);
                        progress.accept(effects.sheets);
                    },
                    jobs);
            return effects;
        } catch (RuntimeException e) {
            effects.close();
            throw e;
        }
    }

    private Looked look(Input input) {
        List<Fault> faults = new ArrayList<>();
        String text = input.text(faults);
        String content = text == null ? "" : Digests.of(text, shelf(before, input), shelf(after, input));
        Optional<Journal.Span> earlier = journal.find(content);
        if (earlier.isPresent()) {
            return new Looked(journal.read(earlier.get()).named(input.place().toString()), earlier, null, false);
        }
        SheetEffect effect;
        boolean ours = false;
        try {
            effect = SheetEffect.of(before, after, input.place().toString(), input.tree(text, faults), faults);
        } catch (RuntimeException e) {
            effect = SheetEffect.refused(input.place().toString(), Refusal.of(input, e));
            ours = !(e instanceof BudgetExceeded);
        }
        return new Looked(effect, Optional.empty(), journal.line(content, effect), ours);
    }

    /** What else a sheet says: its shelf may have changed where it has not. */
    private static String shelf(View view, Input input) {
        return view.shelves().of(input.place().file()).content();
    }

    private void count(Looked looked) {
        Journal.Span span = looked.span.orElseGet(() -> journal.append(looked.line));
        SheetEffect effect = looked.effect;
        sheets++;
        oursAtFault |= looked.ourFault;
        if (effect.isBad()) {
            bad.add(new Listed(effect.sheet(), span));
            return;
        }
        verdicts += effect.worst().changes() ? 1 : 0;
        if (!effect.differences().isEmpty()) {
            changed.add(new Listed(effect.sheet(), span));
        }
        Set<String> seen = new HashSet<>();
        for (Difference each : effect.differences()) {
            Rule rule = rules.computeIfAbsent(each.id(), id -> new Rule());
            rule.sheets += seen.add(each.id()) ? 1 : 0;
            each.what().forEach(what -> {
                counts.merge(what, 1, Integer::sum);
                rule.counts.merge(what, 1, Integer::sum);
            });
        }
    }

    public View before() {
        return before;
    }

    public View after() {
        return after;
    }

    /** How many sheets were looked at. */
    public int sheets() {
        return sheets;
    }

    /** How many come out otherwise. */
    public int changed() {
        return changed.size();
    }

    /** How many cannot be used. */
    public int bad() {
        return bad.size();
    }

    /** In how many the worst finding has another severity. */
    public int verdicts() {
        return verdicts;
    }

    /** Whether a sheet brought a fault of the program to light. */
    public boolean oursAtFault() {
        return oursAtFault;
    }

    /** How often anything comes out otherwise, by the way in which it does. */
    public Map<What, Integer> counts() {
        return counts;
    }

    /** The same by rule. */
    public Map<String, Rule> rules() {
        return rules;
    }

    /** Each sheet that comes out otherwise, in the order of the inputs. */
    void eachChanged(Consumer<SheetEffect> reader) {
        changed.forEach(change -> reader.accept(journal.read(change.span).named(change.sheet)));
    }

    /** Each sheet that cannot be used, in the order of the inputs. */
    void eachBad(Consumer<SheetEffect> reader) {
        bad.forEach(answer -> reader.accept(journal.read(answer.span)));
    }

    @Override
    public void close() throws IOException {
        journal.close();
    }
}
