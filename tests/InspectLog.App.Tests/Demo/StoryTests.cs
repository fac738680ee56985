using InspectLog.App.Demo;
using InspectLog.Checks;
using InspectLog.Inspecting.Standing;
using InspectLog.Measuring;
using System.Text;
using System.Text.Json;

namespace InspectLog.App.Tests.Demo;

/// <summary>Holds the story to the sheet, the instruments and the rule it counts on.</summary>
public sealed partial class StoryTests
{
    [Fact]
    public void Every_check_place_and_word_is_on_the_sheet()
    {
        foreach (var (_, inspection, step) in DemoFiles.Steps<object>())
        {
            var sheet = SheetOf(inspection);
            switch (step)
            {
                case SeeStep see:
                    Assert.Contains(see.Condition, CheckOf(sheet, see.Check, see.Cylinders).Conditions.Select(word => word.Id));
                    break;
                case DoStep done:
                    Assert.Contains(done.Action, CheckOf(sheet, done.Check, done.Cylinders).Actions);
                    break;
                case MeasureStep measure:
                    Assert.NotNull(CheckOf(sheet, measure.Check, One(measure.Cylinder)).Measurand);
                    break;
                case GaugeStep gauge:
                    Assert.True(CheckOf(sheet, gauge.Check, One(gauge.Cylinder)).Measurand!.Gauge);
                    break;
                case PhotoStep { Check: { } check } photo:
                    CheckOf(sheet, check, photo.Cylinder is null ? null : One(photo.Cylinder), placeNeeded: false);
                    break;
                case LooseEndStep end:
                    Assert.Contains(end.Disturbance, sheet.Find(end.Check)!.Disturbs.Select(disturbance => disturbance.Id));
                    break;
                case TieStep tie:
                    Assert.Contains(tie.Disturbance, sheet.Checks.SelectMany(check => check.Disturbs).Select(one => one.Id));
                    break;
                case SayStep { OpenCheck: { } check }:
                    Assert.NotNull(sheet.Find(check));
                    break;
                case NoteStep { Check: { } check }:
                    Assert.NotNull(sheet.Find(check));
                    break;
                case LeaveOutStep left:
                    Assert.NotNull(sheet.Find(left.Check));
                    break;
            }
        }
    }

    [Fact]
    public void Every_recording_is_made_once_and_means_what_the_sheet_knows()
    {
        Assert.Equal(
            DemoFiles.Story.Recordings.Select(recording => recording.File).Order(StringComparer.Ordinal),
            DemoFiles.Steps<SayStep>().Select(part => part.Step.Recording).Order(StringComparer.Ordinal));

        var sheet = BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!;
        foreach (var finding in DemoFiles.Story.Recordings.SelectMany(recording => recording.Findings))
        {
            var check = CheckOf(sheet, finding.Check, finding.Cylinders);
            Assert.True(finding switch
            {
                { Kind: "reading", Value: { } value } =>
                    value >= check.Measurand!.Plausible.From && value <= check.Measurand.Plausible.To,
                { Kind: "observation", Condition: { } condition } => check.Conditions.Any(word => word.Id == condition),
                { Kind: "action", Action: { } action } => check.Actions.Contains(action),
                _ => false,
            });
        }
    }

    [Fact]
    public void Technicians_speak_with_their_own_voice()
    {
        foreach (var (_, inspection, say) in DemoFiles.Steps<SayStep>())
        {
            var recording = DemoFiles.Story.Recordings.Single(one => one.File == say.Recording);
            Assert.Equal(inspection.Technician, recording.Speaker);
            Assert.Contains(recording.Speaker, DemoFiles.Story.People.Select(person => person.Name));
        }
    }

    [Fact]
    public void Every_decision_is_the_one_the_story_counts_on()
    {
        foreach (var (vehicle, inspection, step) in DemoFiles.Steps<MeasureStep>())
        {
            var instrument = InstrumentFor(step.Instrument, step.Unit);
            var values = step.Values.Select(Units.Find(step.Unit)!.ToBase).ToList();
            AssertDecided(
                step.Expect, vehicle, inspection, step.Check,
                new DisplayedReading(values, instrument.Accuracy, instrument.Resolution),
                step);
        }

        foreach (var (vehicle, inspection, step) in DemoFiles.Steps<GaugeStep>())
        {
            InstrumentFor(step.Instrument, step.Unit);
            var unit = Units.Find(step.Unit)!;
            AssertDecided(
                step.Expect, vehicle, inspection, step.Check,
                new Bracket(unit.ToBase(step.Goes), unit.ToBase(step.Stops)));
        }
    }

    [Fact]
    public void Every_sort_of_decision_occurs()
    {
        var expected = DemoFiles.Steps<MeasureStep>().Select(part => part.Step.Expect)
            .Concat(DemoFiles.Steps<GaugeStep>().Select(part => part.Step.Expect))
            .ToHashSet();

        Assert.Superset(new HashSet<string> { "pass", "conditional pass", "conditional fail", "fail" }, expected);
    }

    private static IEnumerable<(string Check, int? Place)> Covered(CheckSheet sheet, object step) => step switch
    {
        SeeStep see => Each(see.Check, see.Cylinders),
        MeasureStep measure => [(measure.Check, measure.Cylinder)],
        GaugeStep gauge => [(gauge.Check, gauge.Cylinder)],
        SayStep { Confirm: true } say => DemoFiles.Story.Recordings.Single(one => one.File == say.Recording).Findings
            .Where(finding => finding.Kind != "action")
            .SelectMany(finding => Each(finding.Check, finding.Cylinders)),
        LeaveOutStep left => Places(sheet, sheet.Find(left.Check)!).Select(place => (left.Check, place)),
        _ => [],
    };

    private static IEnumerable<(string Check, int? Place)> Each(string check, IReadOnlyList<int>? cylinders) =>
        cylinders is null ? [(check, null)] : cylinders.Select(cylinder => (check, (int?)cylinder));

    private static IEnumerable<int?> Places(CheckSheet sheet, Check check) =>
        check.PerCylinder ? Enumerable.Range(1, sheet.Cylinders).Cast<int?>() : [null];

    private static void AssertDecided(
        string expected, StoryVehicle vehicle, StoryInspection inspection, string check, Reading reading, MeasureStep? step = null)
    {
        var measurand = SheetOf(inspection).Find(check)!.Measurand!;
        if (measurand.DecidedBy is { } by && Other(inspection, by, step!) is { } other)
        {
            var together = ConformityRule.Decide(
                Compared.Of(by.Form, reading, Displayed(other), other.Instrument == step!.Instrument), by.Limits, DecisionRule.NonBinary);
            Assert.True(expected == together.Decision.Words(), $"{vehicle.Name}, {check}, {reading}: {together.Decision} at {together.Value}");
            return;
        }

        if (measurand.Limits is null && vehicle.Limits.All(limits => limits.Check != check))
        {
            Assert.Equal("recorded", expected);
            return;
        }

        var own = vehicle.Limits.SingleOrDefault(limits => limits.Check == check);
        var limits = own is null
            ? measurand.Limits!
            : Limits.Of(ToBase(own.Lower, own.Unit), ToBase(own.Upper, own.Unit));
        var decided = ConformityRule.Decide(reading, limits);

        Assert.True(
            expected == decided.Decision.Words(),
            $"{vehicle.Name}, {check}, {reading}: {decided.Decision} at {decided.Value} ± {decided.ExpandedUncertainty}");
    }

    private static double? ToBase(double? value, string unit) =>
        value is { } known ? Units.Find(unit)!.ToBase(known) : null;

    private static Instrument InstrumentFor(string id, string unit)
    {
        var instrument = DemoFiles.Story.Instruments.Single(one => one.Id == id);
        Assert.Equal(Units.Find(unit)!.Kind, instrument.Kind);
        return instrument;
    }

    private static CheckSheet SheetOf(StoryInspection inspection) => BuiltInSheets.Find(inspection.Sheet)!;

    private static IReadOnlyList<int>? One(int? cylinder) => cylinder is { } known ? [known] : null;

    private static Check CheckOf(
        CheckSheet sheet, string id, IReadOnlyList<int>? cylinders, bool placeNeeded = true)
    {
        var check = sheet.Find(id);
        Assert.NotNull(check);
        Assert.True(check.PerCylinder == cylinders is not null || (cylinders is null && !placeNeeded), id);
        Assert.All(cylinders ?? [], cylinder => Assert.InRange(cylinder, 1, sheet.Cylinders));
        return check;
    }
}
