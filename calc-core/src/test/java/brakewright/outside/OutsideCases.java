package brakewright.outside;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.ArgumentsProvider;
import org.junit.jupiter.params.support.AnnotationConsumer;
import org.junit.jupiter.params.support.ParameterDeclarations;

/** Gives a check the rows of its table, and the log of the test run to write to. */
final class OutsideCases implements ArgumentsProvider, AnnotationConsumer<OutsideCheck> {

    private OutsideCheck check;

    @Override
    public void accept(OutsideCheck annotation) {
        check = annotation;
    }

    @Override
    public Stream<? extends Arguments> provideArguments(
            ParameterDeclarations parameters, ExtensionContext context) {
        OutsideLog log =
                context.getRoot()
                        .getStore(ExtensionContext.Namespace.create(OutsideLog.class))
                        .getOrComputeIfAbsent(
                                OutsideLog.class, key -> new OutsideLog(), OutsideLog.class);
        List<OutsideRow> rows =
                OutsideTable.read(check.source()).rows().stream()
                        .filter(row -> row.quantity().equals(check.quantity()))
                        .toList();
        if (rows.isEmpty()) {
            throw new IllegalStateException(
                    check.source() + ".csv has no row about " + check.quantity());
        }
        return rows.stream().map(row -> Arguments.of(log.open(row)));
    }
}
