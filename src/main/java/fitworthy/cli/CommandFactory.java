package fitworthy.cli;

import java.lang.reflect.Constructor;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes commands, and gives those that ask for it what a command finds around it. */
record CommandFactory(CommandContext around) implements IFactory {

    @Override
    public <K> K create(Class<K> made) throws Exception {
        for (Constructor<?> constructor : made.getDeclaredConstructors()) {
            if (constructor.getParameterCount() == 1 && constructor.getParameterTypes()[0] == CommandContext.class) {
                return made.cast(constructor.newInstance(around));
            }
        }
        return CommandLine.defaultFactory().create(made);
    }
}
