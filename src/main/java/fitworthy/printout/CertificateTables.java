package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import fitworthy.advice.Advice;
import fitworthy.advice.Ranked;
import fitworthy.book.Ask;
import fitworthy.book.Party;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Table;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.Alterations.Altering;
import fitworthy.printout.words.Wording;
import fitworthy.sheet.Papers.Alteration;
import fitworthy.sheet.Papers.Certificate;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What is altered, which certificates are in the price, and what is asked of engineer and authority. */
public final class CertificateTables {

    private CertificateTables() {}

    public static List<Block> blocks(Advice advice, List<Ranked> ranked) {
        List<Block> blocks = new ArrayList<>();
        List<Row> altering = Alterations.altering(advice.loadings().get(0).plan()).stream()
                .map(CertificateTables::altering)
                .toList();
        if (altering.isEmpty()) {
            blocks.add(new Paragraph("No part of the plan makes an alteration that may have to be certified."));
        }
        blocks.addAll(new Table(
                        "Alterations",
                        List.of(text("Part", 40), text("Alters", 30), text("State", 15), text("Certificate", 15)),
                        altering)
                .unlessEmpty());
        blocks.addAll(new Table(
                        "Certificates in the price",
                        List.of(text("Certificate", 50), text("Covers", 30), figure("Price", 20)),
                        advice.sheet().papers().certificates().stream()
                                .map(CertificateTables::certificate)
                                .toList())
                .unlessEmpty());
        blocks.addAll(new Table(
                        "Asked of engineer and authority",
                        List.of(
                                text("No.", 6),
                                text("Finding", 34),
                                text("Whom", 16),
                                text("What", 24),
                                text("Bring", 20)),
                        ranked.stream()
                                .flatMap(one -> one.group().card().ask().stream()
                                        .filter(ask -> Party.CERTIFYING.contains(
                                                ask.party().value()))
                                        .map(ask -> asked(one, ask)))
                                .toList())
                .unlessEmpty());
        return blocks;
    }

    private static Row altering(Altering part) {
        return Row.of(
                part.name(),
                part.makes().stream().map(CertificateTables::words).collect(Collectors.joining(", ")),
                part.done() ? "done" : "planned",
                part.certificate().known()
                        ? Words.hyphenated(part.certificate().value().name()).replace('-', ' ')
                        : part.done() ? "not known" : "to be had");
    }

    private static Row certificate(Certificate certificate) {
        return Row.of(
                certificate.name(),
                certificate.covers().known() ? words(certificate.covers().value()) : "not known",
                certificate.price() == null ? "not known" : certificate.price().toString());
    }

    private static Row asked(Ranked one, Ask ask) {
        return new Row(
                List.of(
                        one.number(),
                        Wording.fill(one.group().card().title(), one.group().worst()),
                        Words.capital(ask.party().value().words(ask.of())),
                        Wording.fill(ask.what(), one.group().worst()),
                        Wording.fill(ask.bring(), one.group().worst())),
                FindingBlocks.link(one),
                false);
    }

    private static String words(Alteration alteration) {
        return Words.hyphenated(alteration.name()).replace('-', ' ');
    }
}
