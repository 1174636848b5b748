package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.proof.Cases;
import fitworthy.source.FaultsException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A field that is left out is not asked where it could not decide: the other sides of cases that ask it. */
class AskedWhereItDecidesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "towing | Not where its mass stands for as much | fitments.Bar.plate.d",
                "towing | Where he has ruled out none it is not asked | fitments.Bar.levelling",
                "electrical | At 60 per cent of the table no maker's rating is in question | circuits.Radio.cable.rating",
                "order | A day's work is fitted in | fitments.Spring kit.work.booked",
                "recovery | On a day trip nobody is asked | trip.help",
                "front | Tyres of the same size leave what the camera looks at as it was | vehicle.assistance",
                "across | Elsewhere those aboard are all there are | trip.people"
            })
    void notAsked(String topic, String name, String field) throws FaultsException {
        Cases.Case quiet = Books.cases().stream()
                .filter(other -> other.toString().equals(topic + ": " + name))
                .findFirst()
                .orElseThrow();
        Advice advice = Adviser.advise(Books.engine(), Sheets.read(quiet.tree()));
        assertFalse(
                advice.notAssessed().stream().map(NotAssessed::missing).anyMatch(lacking -> lacking.stream()
                        .anyMatch(one -> one.path().equals(field))),
                () -> field + " is asked");
    }
}
