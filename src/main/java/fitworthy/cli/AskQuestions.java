package fitworthy.cli;

import fitworthy.advice.Questions;
import fitworthy.advice.Settled;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.json.QuestionsJson;
import fitworthy.printout.screen.QuestionsPrintout;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.FieldAnswer;
import fitworthy.source.Place;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says what is to be asked about a sheet, and takes answers. */
@Command(
        name = "questions",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "What is missing or guessed on a sheet, by what it can turn; answers are written into the sheet.",
        footer = {
            "",
            "Examples:",
            "  fitworthy questions scenarios/touring.yaml",
            "  fitworthy questions quote.yaml --answer \"fitments.Front bar.mass=95 kg\"",
            "",
            "Exit code 0 where no question is left, else 1."
        })
final class AskQuestions implements Callable<Integer> {

    private final CommandContext around;

    @Mixin
    private SheetOptions options = new SheetOptions();

    @Mixin
    private FormatOption format = new FormatOption();

    @Option(names = "--all", description = "List all questions, not the first ten.")
    private boolean all;

    @Option(
            names = "--answer",
            paramLabel = "PATH=VALUE",
            description = "Write an answer into the sheet's file, whose comments and layout stay; may be given several"
                    + " times.")
    private List<String> typed = List.of();

    @Option(names = "--ask", description = "Ask the questions one by one, on a terminal, and write the answers.")
    private boolean ask;

    AskQuestions(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException, NotWritten, IOException {
        List<FieldAnswer> answers = answers();
        RuleEngine engine = options.engine(around);
        AnsweredSheet sheet = options.answered(engine);
        Settled settled = answers.isEmpty() ? null : sheet.write(answers);
        if (!format.isJson() && settled != null) {
            new QuestionsPrintout(around.out()).settled(answers, settled);
        }
        if (ask) {
            new Asking(
                            new BufferedReader(new InputStreamReader(around.in(), StandardCharsets.UTF_8)),
                            around.out(),
                            sheet)
                    .run();
        }
        Questions questions = sheet.questions();
        if (format.isJson()) {
            QuestionsJson.print(around.out(), sheet.title(), answers, settled, questions);
        } else if (settled == null && !ask) {
            new QuestionsPrintout(around.out()).print(sheet.title(), questions, all);
        } else if (!ask) {
            new QuestionsPrintout(around.out()).next(questions);
        }
        return questions.questions().isEmpty() ? ExitCodes.IN_ORDER : ExitCodes.SOMETHING_TO_DO;
    }

    /** The answers as typed. @throws FaultsException where one is none, or could not be written or asked for */
    private List<FieldAnswer> answers() throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        Place answer = Place.of("--answer");
        List<FieldAnswer> answers = new ArrayList<>();
        typed.forEach(text -> answers.add(FieldAnswer.parse(answer, text, faults)));
        if (options.isStandardInput() && (ask || !typed.isEmpty())) {
            faults.add(new Fault(
                    ask ? Place.of("--ask") : answer,
                    "",
                    "the sheet comes from the standard input, where nothing can be written",
                    "the name of the sheet's file"));
        }
        if (ask && format.isJson()) {
            faults.add(new Fault(Place.of("--ask"), "", "a person is asked in words", "leave --format out"));
        } else if (ask && System.console() == null) {
            faults.add(new Fault(
                    Place.of("--ask"), "", "nobody is at a terminal here", "--answer path=value for each answer"));
        }
        FaultsException.refuse(faults);
        return answers;
    }
}
