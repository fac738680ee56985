using System.Text;
using InspectLog.Measuring;

namespace InspectLog.Checks.Tests.Sheets;

/// <content>What is accepted, and files that are none.</content>
public partial class CheckSheetFileTests
{
    [Theory]
    [InlineData("/checks/4/measurand/limits/lower", null)]
    [InlineData("/checks/4/measurand/limits", null)]
    [InlineData("/checks/4/measurand/nominal", "1.5")]
    [InlineData("/checks/4/cautions", "[]")]
    [InlineData("/checks/4/placeNoun", "'cylinder'")]
    [InlineData("/checks/4/measurand/displayUnit", "'kΩ'")]
    [InlineData("/version", "2.0")]
    [InlineData("/decisionRule", null)]
    [InlineData("/decisionRule", "'simple'")]
    [InlineData("/decisionRule", "'guard band 0.83'")]
    [InlineData("/decisionRule", "'guard band 5'")]
    [InlineData("/decisionRule", "'risk 0.05'")]
    [InlineData("/coverage", "99")]
    [InlineData("/coverage", "50")]
    [InlineData("/checks/4/disturbs/0/limit", "{'minutes':0.5,'because':'a','source':'b'}")]
    [InlineData("/checks/4/disturbs/0/limit", "{'minutes':600,'because':'a','source':'b'}")]
    [InlineData("/checks/4/urgency", "'now'")]
    [InlineData("/checks/4/urgency", "'later'")]
    public void Sound_change_is_accepted_by_schema_and_loader(string at, string? value)
    {
        var sheet = SheetFiles.Changed(at, value);

        Assert.True(SheetFiles.SchemaAccepts(sheet));
        Assert.Equal(15, CheckSheetFile.Parse(SheetFiles.Bytes(sheet)).Checks.Count);
    }

    [Fact]
    public void Limit_of_time_is_read_in_minutes_with_its_reason_and_source()
    {
        var sheet = SheetFiles.Changed("/checks/4/disturbs/0/limit", "{'minutes':1.5,'because':'It overheats.','source':'A manual'}");

        var read = CheckSheetFile.Parse(SheetFiles.Bytes(sheet)).Checks[4].Disturbs[0].Limit;

        Assert.Equal(new TimeLimit(TimeSpan.FromSeconds(90), "It overheats.", "A manual"), read);
    }

    [Theory]
    [InlineData("'soon'", Urgency.Soon)]
    [InlineData(null, null)]
    public void Urgency_is_read_where_the_sheet_has_one(string? written, Urgency? expected)
    {
        var sheet = SheetFiles.Changed("/checks/4/urgency", written ?? "'later'");
        var checks = CheckSheetFile.Parse(SheetFiles.Bytes(sheet)).Checks;

        Assert.Equal(expected, written is null ? checks[3].Urgency : checks[4].Urgency);
    }

    [Fact]
    public void Sheet_that_is_a_list_is_refused() =>
        Assert.Contains(
            "must be an object",
            Assert.Throws<CheckSheetFormatException>(() => CheckSheetFile.Parse("[]"u8.ToArray())).Message,
            StringComparison.Ordinal);

    [Theory]
    [InlineData("")]
    [InlineData("checks: none")]
    [InlineData("{ \"id\": \"a\", }")]
    [InlineData("{ \"id\": \"a\", \"id\": \"b\" }")]
    public void File_that_is_not_sound_json_is_refused(string text)
    {
        var file = Encoding.UTF8.GetBytes(text);

        var refusal = Assert.Throws<CheckSheetFormatException>(() => CheckSheetFile.Parse(file));

        Assert.StartsWith("The file is not sound JSON.", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Byte_order_mark_does_no_harm()
    {
        byte[] marked = [0xEF, 0xBB, 0xBF, .. SheetFiles.Ignition()];

        Assert.Equal(15, CheckSheetFile.Parse(marked).Checks.Count);
    }

    public static TheoryData<QuantityKind> EveryKind => [.. Enum.GetValues<QuantityKind>()];

    [Theory]
    [MemberData(nameof(EveryKind))]
    public void Schema_knows_the_units_of_every_kind_and_names_the_base_unit_first(QuantityKind kind)
    {
        var inSchema = SheetFiles.SchemaUnits(Kinds.Noun(kind)).ToList();

        Assert.Equal(Units.Of(kind).Select(unit => unit.Symbol).Order(), inSchema.Order());
        Assert.Equal(Units.BaseOf(kind).Symbol, inSchema[0]);
    }
}
