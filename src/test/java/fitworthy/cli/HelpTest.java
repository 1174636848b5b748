package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The help of every command. */
class HelpTest {

    private static Stream<CommandSpec> all(CommandSpec command) {
        return Stream.concat(
                Stream.of(command), command.subcommands().values().stream().flatMap(sub -> all(sub.getCommandSpec())));
    }

    /** Picocli takes a lone percent sign for a placeholder, and warns on the error stream of whoever asks for help. */
    @Test
    void noTextHasAPercentSignThatStandsForSomething() {
        List<String> texts = all(new CommandLine(new Fitworthy(), new CommandFactory(null)).getCommandSpec())
                .flatMap(command -> Stream.of(
                                Stream.of(command.usageMessage().description()),
                                Stream.of(command.usageMessage().footer()),
                                command.options().stream().flatMap(option -> Stream.of(option.description())),
                                command.positionalParameters().stream()
                                        .flatMap(given -> Stream.of(given.description())))
                        .flatMap(some -> some))
                .collect(Collectors.toList());
        assertTrue(texts.size() > 60, texts.size() + " texts");
        texts.forEach(text -> assertDoesNotThrow(() -> String.format(text), text));
    }
}
