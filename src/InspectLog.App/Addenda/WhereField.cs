using System.Globalization;
using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Inspecting.Standing;

namespace InspectLog.App.Addenda;

/// <summary>The field <c>at</c>: a check and its place in one list, so that it can be chosen without scripts and at
/// once.</summary>
internal static class WhereField
{
    private const string Name = "at";

    /// <summary>Each check of those given with its places: "lead-resistance/4" for "Lead resistance, lead 4".</summary>
    public static IEnumerable<(string Value, string Text)> Options(CheckSheet sheet, IEnumerable<Check> checks) =>
        from check in checks
        from place in Places.Of(sheet, check)
        select (
            place is null ? check.Id : string.Create(CultureInfo.InvariantCulture, $"{check.Id}/{place}"),
            Places.Under(check, place));

    /// <summary>What was chosen; null for the inspection as a whole. What the sheet does not have is noted on the form.
    /// </summary>
    public static CheckPlace? Read(PostedForm form, CheckSheet sheet)
    {
        var text = form.Text(Name);
        if (text.Length == 0)
        {
            return null;
        }

        var parts = text.Split('/');
        var check = sheet.Find(parts[0]);
        int? place = parts.Length == 2 && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
        if (check is not null && parts.Length == (place is null ? 1 : 2) && Places.Of(sheet, check).Contains(place))
        {
            return new(check, place);
        }

        form.Refuse(Name, "Choose what it is about from the list.");
        return null;
    }
}
