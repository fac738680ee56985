using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Standing;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Ui;

/// <summary>Records in words. The figures behind the sentences are tested in the measuring room.</summary>
public sealed class RecordWordsTests
{
    private static readonly CheckSheet Sheet = BuiltInSheets.All[0];
    private static readonly Instrument Meter =
        new("meter", "Bench meter", QuantityKind.Resistance, new Accuracy(0.8, 3), 0.01);

    private static Check CheckOf(string id) => Sheet.Find(id)!;

    private static ReadingDecided Read(string check, double value, int? cylinder = null) =>
        ReadingRecords.Decide(1, DecisionRule.NonBinary, new GivenReading(CheckOf(check), cylinder, [value], null, "typed", Meter, []));

    [Fact]
    public void Heading_of_a_check_with_places_names_the_place()
    {
        Assert.Equal("Lead resistance, lead 4", RecordWords.Heading(Sheet, "lead-resistance", 4));
        Assert.Equal("Lead resistance", RecordWords.Heading(Sheet, "lead-resistance", null));
        Assert.Equal("Coil circuit", RecordWords.Heading(Sheet, "coil-circuit-resistance", 3));
    }

    [Fact]
    public void Heading_of_a_check_the_sheet_has_not_is_its_id()
    {
        Assert.Equal("no-such-check", RecordWords.Heading(Sheet, "no-such-check", 2));
    }

    [Fact]
    public void Sentence_gives_value_decision_and_chance()
    {
        var sentence = RecordWords.Sentence(Read("coil-circuit-resistance", 1.2), CheckOf("coil-circuit-resistance"));

        Assert.StartsWith("1.200\u00a0Ω ± 0.039\u00a0Ω: pass.", sentence, StringComparison.Ordinal);
        Assert.EndsWith("within 0.6 to 2.0\u00a0Ω.", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Sentence_without_limits_says_that_nothing_was_decided()
    {
        var meter = new Instrument("light", "Timing light", QuantityKind.Angle, new Accuracy(0, 1), 1);
        var reading = ReadingRecords.Decide(
            1, DecisionRule.NonBinary, new GivenReading(CheckOf("ignition-timing"), null, [12], null, "12", meter, []));

        Assert.Equal("12°. Recorded; there are no limits to decide it against.", RecordWords.Sentence(reading, CheckOf("ignition-timing")));
        Assert.Equal(PlaceOutcome.Recorded, RecordWords.OutcomeOf(reading));
    }

    [Theory]
    [InlineData(1.2, PlaceOutcome.Good)]
    [InlineData(1.99, PlaceOutcome.Doubtful)]
    [InlineData(2.01, PlaceOutcome.Doubtful)]
    [InlineData(9, PlaceOutcome.Bad)]
    public void Outcome_of_a_reading_follows_its_decision(double value, PlaceOutcome outcome)
    {
        Assert.Equal(outcome, RecordWords.OutcomeOf(Read("coil-circuit-resistance", value)));
    }

    [Fact]
    public void Editable_value_can_be_read_back_as_typed()
    {
        var measurand = CheckOf("coil-secondary-resistance").Measurand!;
        var text = RecordWords.Editable(9400, measurand.DisplayUnit);

        var read = TypedNumber.Read(text, measurand.Kind, measurand.DisplayUnit, measurand.Plausible);

        Assert.Equal(9400, Assert.IsType<TypedNumber.Certain>(read).BaseValue, 6);
    }

    [Fact]
    public void Editable_negative_value_has_a_minus_a_keyboard_has()
    {
        Assert.Equal("-5", RecordWords.Editable(-5, Units.Degree));
    }
}
