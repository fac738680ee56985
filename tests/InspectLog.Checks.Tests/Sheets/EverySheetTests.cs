using System.Security.Cryptography;
using System.Text.Json.Nodes;
using InspectLog.Measuring;

namespace InspectLog.Checks.Tests.Sheets;

/// <summary>What every sheet to start with has to say of each of its checks.</summary>
public class EverySheetTests
{
    public static TheoryData<string> Sheets => [.. BuiltInSheets.All.Select(sheet => sheet.Id)];

    public static TheoryData<string, string> Checks =>
        new(BuiltInSheets.All.SelectMany(sheet => sheet.Checks.Select(check => (sheet.Id, check.Id))));

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Sheet_fits_the_schema_and_pins_the_hash_of_its_file(string sheet)
    {
        var file = SheetFiles.Resource(sheet);

        Assert.True(SheetFiles.SchemaAccepts(JsonNode.Parse(file)!));
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(file)), BuiltInSheets.Find(sheet)!.Sha256);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Sheet_defers_to_the_manual_and_to_licensed_practice(string sheet)
    {
        Assert.Contains("maker's manual", BuiltInSheets.Find(sheet)!.Notice, StringComparison.Ordinal);
        Assert.Contains("licensed practice", BuiltInSheets.Find(sheet)!.Notice, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Checks))]
    public void Check_says_how_and_in_which_state_and_what_can_hurt(string sheet, string id)
    {
        var check = Check(sheet, id);

        Assert.NotEmpty(check.Method);
        Assert.NotEmpty(check.SafeState);
        Assert.NotEmpty(check.Cautions);
        Assert.EndsWith("?", check.Question, StringComparison.Ordinal);
        Assert.All(
            check.Method.Concat(check.SafeState).Concat(check.Cautions), text => Assert.EndsWith(".", text, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Checks))]
    public void Limits_say_their_source_and_that_the_manual_wins(string sheet, string id)
    {
        if (Check(sheet, id).Measurand is not { } measurand)
        {
            return;
        }

        Assert.Contains("manual", measurand.LimitSource, StringComparison.Ordinal);
        Assert.Matches(
            measurand.Limits is null
                ? "^(Only the vehicle's manual can say|No limits of its own)"
                : "^(Common practice, no source|One vehicle's service manual of \\d{4})",
            measurand.LimitSource);
        if (measurand.DecidedBy is { } compared)
        {
            Assert.Matches("^(Common practice, no source|One vehicle's service manual of \\d{4}).*The vehicle's manual wins.$", compared.LimitSource);
        }
    }

    // A figure said without its unit must fit only one of the units a person would leave out.
    [Theory]
    [MemberData(nameof(Checks))]
    public void Plausible_span_of_a_gap_tells_millimetres_thou_and_inches_apart(string sheet, string id)
    {
        if (Check(sheet, id).Measurand is { Gauge: true, Plausible: var plausible })
        {
            Assert.True(Units.Thou.FromBase(plausible.From) > plausible.To);
            Assert.True(Units.Inch.FromBase(plausible.To) < plausible.From);
        }
    }

    [Theory]
    [MemberData(nameof(Checks))]
    public void Check_with_the_ignition_on_warns_of_what_turns_and_burns_and_all_others_start_with_it_off(string sheet, string id)
    {
        var check = Check(sheet, id);
        var cautions = string.Join(' ', check.Cautions);

        if (check.Disturbs.Any(disturbance => disturbance.Id == "ignition-on"))
        {
            Assert.Matches("Running engine|fan and belts", cautions);
            Assert.Matches("hot", cautions);
        }
        else
        {
            Assert.Contains("Ignition off", check.SafeState[0], StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Checks))]
    public void Check_with_a_running_engine_warns_of_it_and_of_high_voltage(string sheet, string id)
    {
        if (id is "spark" or "engine-restart" or "ignition-timing")
        {
            var cautions = string.Join(' ', Check(sheet, id).Cautions);

            Assert.Contains("Running engine", cautions, StringComparison.Ordinal);
            Assert.Contains("High voltage", cautions, StringComparison.Ordinal);
            Assert.Contains(Check(sheet, id).Disturbs, disturbance => disturbance.Id == "ignition-on");
        }
    }

    [Theory]
    [MemberData(nameof(Checks))]
    public void Disturbance_names_a_part_and_what_puts_it_right(string sheet, string id) =>
        Assert.All(Check(sheet, id).Disturbs, disturbance =>
        {
            Assert.NotNull(disturbance.Part);
            Assert.NotEqual(disturbance.Text, disturbance.Tie);
        });

    [Theory]
    [MemberData(nameof(Checks))]
    public void Ignition_that_is_on_is_limited_to_two_minutes_and_what_does_no_harm_is_not(string sheet, string id) =>
        Assert.All(Check(sheet, id).Disturbs, disturbance =>
        {
            Assert.Equal(disturbance.Id == "ignition-on", disturbance.Limit is not null);
            if (disturbance.Limit is { } limit)
            {
                Assert.Equal(TimeSpan.FromMinutes(2), limit.Longest);
                Assert.Contains("overheats", limit.Because, StringComparison.Ordinal);
                Assert.Equal("Common practice, no source. The vehicle maker's manual wins.", limit.Source);
            }
        });

    // What one check of an id takes apart or is called is the same on every sheet, so that a person meets one word for it.
    [Theory]
    [MemberData(nameof(Checks))]
    public void Check_of_one_id_is_called_and_disturbs_the_same_on_every_sheet(string sheet, string id)
    {
        var (check, first) = (Check(sheet, id), BuiltInSheets.All.Select(one => one.Find(id)).First(one => one is not null)!);

        Assert.Equal((first.Title, first.ShortTitle, first.PlaceNoun), (check.Title, check.ShortTitle, check.PlaceNoun));
        Assert.Equal(first.Measurand?.Limits, check.Measurand?.Limits);
        Assert.Equal(first.Conditions.Select(one => (one.Id, one.Meaning)), check.Conditions.Select(one => (one.Id, one.Meaning)));
        Assert.Equal(first.Actions, check.Actions);
        Assert.Equal(first.Disturbs, check.Disturbs);
    }

    [Theory]
    [MemberData(nameof(Checks))]
    public void Part_that_is_worked_on_belongs_to_one_check(string sheet, string id)
    {
        var main = BuiltInSheets.Find(sheet)!.Checks.Where(check => check.Spoken.MainForActions && check.Id != id);

        Assert.True(
            !Check(sheet, id).Spoken.MainForActions
            || main.All(other => !other.Spoken.Parts.Intersect(Check(sheet, id).Spoken.Parts).Except(["gap", "clearance", "mark", "marks", "lead", "leads", "voltage", "distributor"]).Any()));
    }

    // A word that stands for two conditions of one check could not be read.
    [Theory]
    [MemberData(nameof(Checks))]
    public void No_phrase_stands_for_two_conditions_of_a_check(string sheet, string id)
    {
        var phrases = Check(sheet, id).Conditions.SelectMany(condition => condition.Phrases.Prepend(condition.Id)).ToList();

        Assert.Equal(phrases.Distinct(StringComparer.OrdinalIgnoreCase), phrases);
    }

    private static Check Check(string sheet, string id) => BuiltInSheets.Find(sheet)!.Find(id)!;
}
