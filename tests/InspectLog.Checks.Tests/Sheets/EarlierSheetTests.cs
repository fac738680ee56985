using System.Text.Json.Nodes;

namespace InspectLog.Checks.Tests.Sheets;

public class EarlierSheetTests
{
    /// <summary>Journals pin this hash: not one byte of the file may change.</summary>
    private const string Version2 = "498186981c26035753e46f0d47d69a9d5beeb1b242639dfa45ab6f0d0e28186f";

    /// <summary>From before loose ends had a limit of time.</summary>
    private const string Version3 = "dd1c69d376bbdd2ee2362038c7c4f20b445df490d1747eb255ee6ae7c1cd94e4";

    /// <summary>The search in depth, from before loose ends had a limit of time.</summary>
    private const string InDepth1 = "429dc19aa80066f2b1c142f5039aaf770dab3ef7510285c6e2fb331e13dad76c";

    /// <summary>The sheet inspections are started with; not one byte of it may change either, unless as a new version.</summary>
    private const string Version4 = "33a6d805b09c32e0b9e3384528bb86073f5eee7dae692dede2ce74bc4d6bea32";

    private const string InDepth2 = "561c746cc95764451011bff37dd36201fdc836ea0bdf55cf70e324a8fd0dabd9";

    private static CheckSheet Sheet => BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless)!;

    [Fact]
    public void Sheet_that_old_journals_pin_is_found_by_its_hash_as_it_was()
    {
        var old = BuiltInSheets.FindExact(Version2)!;

        Assert.Equal(("ignition-breakerless-6", 2, 6), (old.Id, old.Version, old.Cylinders));
        Assert.Equal([6], old.CylinderCounts);
        Assert.Equal(Version2, CheckSheetFile.Parse(BuiltInSheets.FileOf(Version2)!.Value).Sha256);
        Assert.True(SheetFiles.SchemaAccepts(JsonNode.Parse(SheetFiles.Resource(BuiltInSheets.IgnitionBreakerless6))!));
    }

    [Fact]
    public void Current_sheet_is_found_by_its_hash_too()
    {
        Assert.Equal(Version4, Sheet.Sha256);
        Assert.Same(Sheet, BuiltInSheets.FindExact(Version4));
        Assert.Equal(InDepth2, BuiltInSheets.Find(BuiltInSheets.IgnitionInDepth)!.Sha256);
        Assert.Equal(SheetFiles.Ignition(), BuiltInSheets.FileOf(Sheet.Sha256)!.Value.ToArray());
    }

    [Theory]
    [InlineData(Version3, BuiltInSheets.IgnitionBreakerless, 3)]
    [InlineData(InDepth1, BuiltInSheets.IgnitionInDepth, 1)]
    public void Sheet_from_before_limits_of_time_is_found_by_its_hash_and_has_none(string sha256, string id, int version)
    {
        var old = BuiltInSheets.FindExact(sha256)!;
        var now = BuiltInSheets.Find(id)!;

        Assert.Equal((id, version, version + 1), (old.Id, old.Version, now.Version));
        Assert.Equal(sha256, CheckSheetFile.Parse(BuiltInSheets.FileOf(sha256)!.Value).Sha256);
        Assert.All(old.Checks.SelectMany(check => check.Disturbs), disturbance => Assert.Null(disturbance.Limit));
        Assert.Equal(
            old.Checks.SelectMany(check => check.Disturbs),
            now.Checks.SelectMany(check => check.Disturbs).Select(disturbance => disturbance with { Limit = null }));
        Assert.True(old.IsOneWith(now.Id));
    }

    [Theory]
    [InlineData("")]
    [InlineData("cccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccc")]
    public void Unknown_hash_finds_no_sheet(string sha256)
    {
        Assert.Null(BuiltInSheets.FindExact(sha256));
        Assert.Null(BuiltInSheets.FileOf(sha256));
    }

    [Fact]
    public void Earlier_id_names_the_sheet_that_goes_on_from_it()
    {
        Assert.Same(Sheet, BuiltInSheets.Find("ignition-breakerless-6"));
        Assert.Equal((4, "Breakerless ignition"), (Sheet.Version, Sheet.Title));
    }

    [Fact]
    public void Only_the_current_sheets_are_to_start_with() =>
        Assert.Equal(
            [
                BuiltInSheets.IgnitionBreakerless, BuiltInSheets.IgnitionInDepth, BuiltInSheets.IgnitionContactBreaker,
                BuiltInSheets.CompressionLeakDown, BuiltInSheets.ChargingStarting,
            ],
            BuiltInSheets.All.Select(sheet => sheet.Id));

    [Fact]
    public void Checks_of_a_sheet_and_of_the_one_it_goes_on_from_are_the_same_both_ways()
    {
        var old = BuiltInSheets.FindExact(Version2)!;

        Assert.True(Sheet.IsOneWith(old.Id));
        Assert.True(old.IsOneWith(Sheet.Id));
        Assert.True(Sheet.IsOneWith(Sheet.Id));
        Assert.False(Sheet.IsOneWith("brakes"));
        Assert.False(Sheet.IsOneWith(BuiltInSheets.IgnitionInDepth));
        Assert.Equal(old.Checks.Select(check => check.Id), Sheet.Checks.Select(check => check.Id));
    }

    [Fact]
    public void Sheet_from_elsewhere_is_one_with_those_its_file_goes_on_from()
    {
        var own = CheckSheetFile.Parse(SheetFiles.Bytes(SheetFiles.Changed("/continues", "['workshop-sheet']"))) with { Id = "other" };

        Assert.True(own.IsOneWith("workshop-sheet"));
        Assert.False(own.IsOneWith("ignition-breakerless"));
    }

    [Fact]
    public void Limits_say_of_which_kind_of_ignition_they_hold() =>
        Assert.All(
            ["supply-voltage", "coil-circuit-resistance", "coil-secondary-resistance", "pickup-air-gap"],
            id => Assert.Contains("it does not hold for all", Sheet.Find(id)!.Measurand!.LimitSource, StringComparison.Ordinal));

    [Fact]
    public void No_condition_goes_by_words_that_are_one_persons_own() =>
        Assert.DoesNotContain(
            Sheet.Checks.SelectMany(check => check.Conditions).SelectMany(condition => condition.Phrases),
            phrase => phrase.Contains("right up", StringComparison.Ordinal) && phrase.StartsWith("fire", StringComparison.Ordinal)
                || phrase.StartsWith("healthy ", StringComparison.Ordinal));
}
