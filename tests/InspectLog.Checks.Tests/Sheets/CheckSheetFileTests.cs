using System.Text;
using InspectLog.Measuring;

namespace InspectLog.Checks.Tests.Sheets;

public class CheckSheetFileTests
{
    // Positions in the built-in sheet: check 4 is the coil circuit, measured; check 1 is lead condition, observed.

    /// <summary>Where the sheet is changed, to what (null takes it out), where the complaint belongs and what it says.
    /// Schema and loader both refuse these.</summary>
    public static TheoryData<string, string?, string, string> BrokenForm => new()
    {
        { "/colour", "'red'", "", "'colour' is not a member known here. Known are: id, version" },
        { "/checks/4/limit", "2", "checks[4]", "'limit' is not a member" },
        { "/checks/4/measurand/limits/max", "2", "checks[4].measurand.limits", "'max' is not a member" },
        { "/checks/4/measurand/plausible/lower", "2", "checks[4].measurand.plausible", "'lower' is not a member" },
        { "/checks/4/measurand/unit", "'Ω'", "checks[4].measurand", "'unit' is not a member" },
        { "/checks/4/spoken/verbs", "[]", "checks[4].spoken", "'verbs' is not a member" },
        { "/checks/1/conditions/0/colour", "'red'", "checks[1].conditions[0]", "'colour' is not a member" },
        { "/checks/4/disturbs/0/why", "''", "checks[4].disturbs[0]", "'why' is not a member" },
        { "/title", null, "", "'title' is missing" },
        { "/checks/4/spoken", null, "checks[4]", "'spoken' is missing" },
        { "/checks/4/measurand/plausible", null, "checks[4].measurand", "'plausible' is missing" },
        { "/checks/4/measurand/plausible/to", null, "checks[4].measurand.plausible", "'to' is missing" },
        { "/checks/4/measurand/limitSource", null, "checks[4].measurand", "'limitSource' is missing" },
        { "/checks/4/disturbs/0/tie", null, "checks[4].disturbs[0]", "'tie' is missing" },
        { "/checks/1/conditions/0/meaning", null, "checks[1].conditions[0]", "'meaning' is missing" },
        { "/id", "'my sheet'", "id", "'my sheet' cannot be an id" },
        { "/checks/4/id", "'Coil'", "checks[4].id", "'Coil' cannot be an id" },
        { "/version", "0", "version", "a whole number from 1" },
        { "/version", "1.5", "version", "a whole number from 1" },
        { "/version", "'1'", "version", "must be a number" },
        { "/cylinders", "17", "cylinders", "a whole number from 1 to 16" },
        { "/checks", "[]", "checks", "the list is empty" },
        { "/checks", "{}", "checks", "must be a list" },
        { "/checks/4", "'coil'", "checks[4]", "must be an object" },
        { "/checks/4/title", "''", "checks[4].title", "the text is empty" },
        { "/checks/4/title", "'Coil '", "checks[4].title", "starts or ends with a space" },
        { "/checks/4/title", "null", "checks[4].title", "must be text" },
        { "/checks/4/measurand", "null", "checks[4].measurand", "must be an object" },
        { "/checks/1/placeNoun", "'wheel'", "checks[1].placeNoun", "'wheel' is not one of: cylinder, lead" },
        { "/checks/4/measurand/kind", "'colour'", "checks[4].measurand.kind", "'colour' is not one of: resistance" },
        { "/checks/4/measurand/displayUnit", "'mm'", "checks[4].measurand.displayUnit", "'mm' is no unit of resistance" },
        { "/checks/4/measurand/displayUnit", "'ohms'", "checks[4].measurand.displayUnit", "'ohms' is no unit" },
        { "/checks/4/measurand/limits", "{}", "checks[4].measurand.limits", "Give a lower limit" },
        { "/checks/4/measurand/limits/upper", "'2'", "checks[4].measurand.limits.upper", "must be a number" },
        { "/checks/4/measurand/gauge", "'no'", "checks[4].measurand.gauge", "true or false" },
        { "/checks/1/actions/0", "'painted'", "checks[1].actions[0]", "'painted' is not one of: replaced" },
        { "/checks/1/actions/0", "'cleaned'", "checks[1].actions", "'cleaned' stands in the list twice" },
        { "/checks/1/conditions/0/meaning", "'perfect'", "checks[1].conditions[0].meaning", "'perfect' is not one of: good" },
        { "/checks/1/conditions/0/meaning", "'Good'", "checks[1].conditions[0].meaning", "'Good' is not one of" },
        { "/checks/1/conditions/0/id", "'as-new'", "checks[1].conditions[0].id", "'as-new' cannot be a condition" },
        { "/checks/1/conditions/0/phrases", "['a','a']", "checks[1].conditions[0].phrases", "'a' stands in the list twice" },
        { "/checks/4/method", "[]", "checks[4].method", "the list is empty" },
        { "/checks/4/safeState", "[]", "checks[4].safeState", "the list is empty" },
        { "/checks/4/cautions/0", "5", "checks[4].cautions[0]", "must be text" },
        { "/checks/4/spoken/subjects", "[]", "checks[4].spoken.subjects", "the list is empty" },
        { "/decisionRule", "'strict'", "decisionRule", "'strict' is no decision rule" },
        { "/decisionRule", "'risk 0'", "decisionRule", "'risk 0' is no decision rule" },
        { "/decisionRule", "'guard band -1'", "decisionRule", "is no decision rule" },
        { "/decisionRule", "5", "decisionRule", "must be text" },
        { "/checks/5/measurand/copperWinding", "'yes'", "checks[5].measurand.copperWinding", "true or false" },
        { "/checks/1/conditions", "[]", "checks[1]", "neither a measurand nor conditions" },
    };

    /// <summary>As above; only the loader can refuse these, since a schema does not compare numbers or ids.</summary>
    public static TheoryData<string, string?, string, string> BrokenSense => new()
    {
        { "/checks/4/id", "'coil-secondary-resistance'", "checks", "the id 'coil-secondary-resistance'" },
        { "/checks/1/conditions/0/id", "'chafed'", "checks[1].conditions", "'chafed' stands in the list twice" },
        { "/checks/6/disturbs/1", "{'id':'distributor-cap','text':'a','tie':'b'}", "checks[6].disturbs", "stands in the list twice" },
        { "/checks/4/disturbs/0/id", "'coil-lead'", "checks", "'coil-lead' is worded in two ways" },
        { "/checks/4/measurand/limits/upper", "0.5", "checks[4].measurand.limits", "upper limit must lie above" },
        { "/checks/4/measurand/limits/upper", "0.6", "checks[4].measurand.limits", "upper limit must lie above" },
        { "/checks/4/measurand/limits/upper", "11", "checks[4].measurand", "does not hold the limits" },
        { "/checks/4/measurand/limits/lower", "0", "checks[4].measurand", "does not hold the limits" },
        { "/checks/4/measurand/plausible/to", "0.1", "checks[4].measurand.plausible", "'to' must lie above 'from'" },
        { "/checks/4/measurand/nominal", "50", "checks[4].measurand", "outside of the plausible span" },
        { "/checks/4/measurand/nominal", "2.5", "checks[4].measurand", "outside of the limits" },
        { "/checks/4/measurand/nominal", "0.5", "checks[4].measurand", "outside of the limits" },
        { "/decisionRule", "'risk 0.7'", "decisionRule", "'risk 0.7' is no decision rule" },
        { "/checks/3/measurand/copperWinding", "true", "checks[3].measurand", "only a resistance" },
        { "/checks/4/measurand/nominal", "1e999", "checks[4].measurand.nominal", "too large" },
    };

    [Theory]
    [MemberData(nameof(BrokenForm))]
    [MemberData(nameof(BrokenSense))]
    public void Broken_file_is_refused_where_it_is_broken(string at, string? value, string path, string says)
    {
        var file = SheetFiles.Bytes(SheetFiles.Changed(at, value));

        var refusal = Assert.Throws<CheckSheetFormatException>(() => CheckSheetFile.Parse(file));

        Assert.Equal(path, refusal.Path);
        Assert.StartsWith(path, refusal.Message, StringComparison.Ordinal);
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(BrokenForm))]
    public void Schema_refuses_what_is_broken_in_form(string at, string? value, string path, string says) =>
        Assert.False(SheetFiles.SchemaAccepts(SheetFiles.Changed(at, value)), $"{path}: {says}");

    [Theory]
    [MemberData(nameof(BrokenSense))]
    public void Schema_cannot_see_what_is_broken_in_sense(string at, string? value, string path, string says) =>
        Assert.True(SheetFiles.SchemaAccepts(SheetFiles.Changed(at, value)), $"{path}: {says}");

    [Theory]
    [InlineData(null, "non-binary")]
    [InlineData("'simple'", "simple")]
    [InlineData("'guard band 0.83'", "guard band 0.83")]
    [InlineData("'risk 0.05'", "risk 0.05")]
    public void Rule_is_the_one_the_file_names_and_non_binary_where_it_names_none(string? value, string id) =>
        Assert.Equal(id, CheckSheetFile.Parse(SheetFiles.Bytes(SheetFiles.Changed("/decisionRule", value))).Rule.Id);

    [Fact]
    public void Coil_secondary_is_a_copper_winding_and_the_circuit_with_its_ballast_is_none()
    {
        var sheet = BuiltInSheets.All[0];

        Assert.True(sheet.Find("coil-secondary-resistance")!.Measurand!.IsCopperWinding);
        Assert.False(sheet.Find("coil-circuit-resistance")!.Measurand!.IsCopperWinding);
    }

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
    public void Sound_change_is_accepted_by_schema_and_loader(string at, string? value)
    {
        var sheet = SheetFiles.Changed(at, value);

        Assert.True(SheetFiles.SchemaAccepts(sheet));
        Assert.Equal(15, CheckSheetFile.Parse(SheetFiles.Bytes(sheet)).Checks.Count);
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
