using InspectLog.Checks.Judging;

namespace InspectLog.Checks.Tests.Sheets;

/// <summary>Places of any noun, the engine's or a check's own, by number or by name.</summary>
public class PlaceTests
{
    private const string Corners =
        "[{'name':'front left','phrases':['near side front']},{'name':'front right','phrases':[]},{'name':'rear left','phrases':[]},{'name':'rear right','phrases':[]}]";

    private static CheckSheet Charging => BuiltInSheets.Find(BuiltInSheets.ChargingStarting)!;

    [Theory]
    [InlineData("cylinder", "cylinders")]
    [InlineData("brush", "brushes")]
    [InlineData("battery", "batteries")]
    [InlineData("axle", "axles")]
    [InlineData("box", "boxes")]
    [InlineData("tray", "trays")]
    public void Noun_has_a_plural(string one, string several) => Assert.Equal(several, new CheckPlaces(one, null, []).Nouns);

    [Fact]
    public void Numbered_places_are_called_by_noun_and_number()
    {
        var leads = new CheckPlaces("lead", null, []);

        Assert.Equal(("lead 4", "4", "leads 2, 3 and 4"), (leads.NameOf(4), leads.LabelOf(4), leads.NameOf([2, 3, 4])));
        Assert.Equal((8, "lead from 1 to 8"), (leads.CountFor(8), leads.Choice(8)));
        Assert.Equal("cell from 1 to 6", new CheckPlaces("cell", 6, []).Choice(8));
    }

    [Fact]
    public void Named_places_are_called_by_name_and_noun()
    {
        var corners = WithCorners().Checks[0].Places!;

        Assert.Equal(("front left corner", "front left", "front left and rear right corners"), (corners.NameOf(1), corners.LabelOf(1), corners.NameOf([1, 4])));
        Assert.Equal("corner: front left, front right, rear left or rear right", corners.Choice(6));
        Assert.Equal(["near side front"], corners.Names[0].Phrases);
        Assert.Equal("corner 5", corners.NameOf(5)); // a record holds what it holds
    }

    [Theory]
    [InlineData(4)]
    [InlineData(12)]
    public void Places_of_its_own_do_not_follow_the_engine(int cylinders)
    {
        var sheet = Charging.For(cylinders);

        Assert.Equal([1, 2, 3, 4, 5, 6], sheet.PlacesOf(sheet.Find("cell-density")!));
        Assert.Equal([1, 2], sheet.PlacesOf(sheet.Find("battery-terminals")!));
        Assert.Empty(sheet.PlacesOf(sheet.Find("starter-action")!));
        Assert.Equal(6, ObservationJudge.JudgePlaces(sheet.Find("cell-level")!, cylinders, [new Observed(6, "dry", false)]).Count);
        Assert.Throws<ArgumentException>(() => ObservationJudge.JudgePlaces(sheet.Find("cell-level")!, 12, [new Observed(7, "dry", false)]));
    }

    [Fact]
    public void Places_of_cylinders_follow_the_engine()
    {
        var sheet = BuiltInSheets.Find(BuiltInSheets.CompressionLeakDown)!.For(8);

        Assert.Equal(Enumerable.Range(1, 8), sheet.PlacesOf(sheet.Find("leak-down")!));
    }

    [Fact]
    public void One_part_of_each_place_in_checks_with_other_places_is_refused()
    {
        var sheet = SheetFiles.Changed("/checks/1/places", "4");
        sheet["checks"]![1]!["placeNoun"] = "corner";

        var refusal = Assert.Throws<CheckSheetFormatException>(() => CheckSheetFile.Parse(SheetFiles.Bytes(sheet)));

        Assert.Equal("checks", refusal.Path);
        Assert.Contains("there is one plug lead for each place, but lead-condition has other places", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_noun_and_any_number_of_places_is_read()
    {
        var sheet = WithCorners();

        Assert.Equal(("corner", 4), (sheet.Checks[0].PlaceNoun, sheet.PlacesOf(sheet.Checks[0]).Count()));
        Assert.True(SheetFiles.SchemaAccepts(CornersFile()));
    }

    private static CheckSheet WithCorners() => CheckSheetFile.Parse(SheetFiles.Bytes(CornersFile()));

    private static System.Text.Json.Nodes.JsonNode CornersFile()
    {
        var sheet = SheetFiles.Changed("/checks/0/places", Corners);
        sheet["checks"]![0]!["placeNoun"] = "corner";
        return sheet;
    }
}
