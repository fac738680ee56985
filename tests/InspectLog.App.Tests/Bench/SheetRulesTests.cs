using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Bench;

/// <summary>The journal's door: what the inspection's sheet does not have is not recorded, whatever sends it.</summary>
public sealed class SheetRulesTests
{
    private static readonly MediaFile Photo = new(new string('b', 64), 10, "image/jpeg");

    private static readonly SheetRules Rules = new(SheetLibrary.BuiltIn);

    public static TheoryData<string, EntryBody> Impossible => new()
    {
        { "place that is not there", new PhotoKept(2, Photo, 1, 1, "lead-condition", 99) },
        { "place without a check", new PhotoKept(2, Photo, 1, 1, null, 3) },
        { "check that is not there", new PhotoKept(2, Photo, 1, 1, "tyres", null) },
        { "no place where one is needed", Written.Seen("lead-condition", "good") },
        { "place where there is none", Written.Done("rotor-blade", PartActions.Replaced, 1) },
        { "place beyond the last", Written.Seen("lead-condition", "good", 7) },
        { "place before the first", Written.Seen("lead-condition", "good", 0) },
        { "condition of another check", Written.Seen("lead-condition", "wet", 1) },
        { "action that is no action", Written.Done("lead-condition", "polished", 1) },
        { "reading of what is only looked at", Written.Reading("lead-resistance", 8000, 1) with { Check = "lead-condition" } },
        { "reading without its lead", Written.Reading("lead-resistance", 9000) },
        { "note about no check", new NoteWritten(2, "tyres", "worn") },
        { "recording beside no check", new RecordingKept(2, Photo, 1, "tyres") },
        { "leaving out no check", new CheckLeftOut(2, "tyres", "none") },
        { "end that the check does not leave", new LooseEndOpened(2, "Cap off", "Put it on", "plug-gap", null, "distributor-cap") },
        { "inspection that is not there", new NoteWritten(9, null, "hello") },
        { "amending what is not there", new NoteWritten(2, null, "hello") { Amends = 3 } },
        { "amending another kind", new NoteWritten(2, null, "hello") { Amends = 4 } },
        { "withdrawing what is not there", new EntryWithdrawn(77, "misread") },
        { "restoring what is not there", new EntryRestored(77) },
        { "correcting the words of what is no voice note", new WordsCorrected(3, "lead one") },
        { "reopening what was not dropped", new FindingReopened(new(3, 0)) },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void What_cannot_be_is_refused_in_a_sentence(string what, EntryBody body)
    {
        var scene = Written.Scene(Written.Reading("lead-resistance", 8000, 1), Written.Seen("lead-condition", "good", 1));

        var refusal = Rules.Refusal(scene.Vehicle, body);

        Assert.True(refusal is not null, what);
        Assert.EndsWith(".", refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_check_place_condition_and_action_of_the_sheet_is_let_in()
    {
        foreach (var cylinders in new[] { 3, 4, 5, 6, 8, 12 })
        {
            var scene = Written.Scene(cylinders);
            foreach (var check in scene.Sheet.Checks)
            {
                int? last = check.PerCylinder ? cylinders : null;
                Assert.All(check.Conditions, condition => Assert.Null(Rules.Refusal(scene.Vehicle, Written.Seen(check.Id, condition.Id, last))));
                Assert.All(check.Actions, action => Assert.Null(Rules.Refusal(scene.Vehicle, Written.Done(check.Id, action, last))));
                Assert.Null(Rules.Refusal(scene.Vehicle, new PhotoKept(2, Photo, 1, 1, check.Id, last)));
                if (check.PerCylinder)
                {
                    Assert.NotNull(Rules.Refusal(scene.Vehicle, new PhotoKept(2, Photo, 1, 1, check.Id, cylinders + 1)));
                }
            }
        }
    }

    [Fact]
    public void Amendment_of_the_same_kind_and_withdrawal_are_let_in()
    {
        var scene = Written.Scene(Written.Reading("lead-resistance", 8000, 1));
        var amended = Written.Reading("lead-resistance", 8100, 2) with { Amends = 3 };

        Assert.Null(Rules.Refusal(scene.Vehicle, amended));
        Assert.Null(Rules.Refusal(scene.Vehicle, new EntryWithdrawn(3, "misread")));
    }
}
