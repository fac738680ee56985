using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Checks;

namespace InspectLog.App.Bench;

/// <summary>A check and a place, as a form names them.</summary>
public sealed record CheckPlace(Check Check, int? Cylinder);

/// <summary>Reads the fields <c>check</c> and <c>cylinder</c>. A wrong one is noted on the form.</summary>
public static class PlaceFields
{
    /// <summary>A check with one place; null when the check is wrong.</summary>
    public static CheckPlace? Read(PostedForm form, CheckSheet sheet) =>
        ReadSeveral(form, sheet, out var check) is var places && check is not null
            ? new CheckPlace(check, places.Count > 0 ? places[0] : null)
            : null;

    /// <summary>The places of a check; for a check done once, its one place. At least one when the form is valid.</summary>
    public static IReadOnlyList<int?> ReadSeveral(PostedForm form, CheckSheet sheet, out Check? check)
    {
        check = sheet.Find(form.Text("check"));
        if (check is null)
        {
            form.Refuse("check", "Choose a check of this sheet.");
            return [];
        }

        if (!check.PerCylinder)
        {
            return [null];
        }

        var places = form.All("cylinder").Select(text => Cylinder(text, sheet)).ToList();
        if (places.Count == 0 || places.Contains(null))
        {
            form.Refuse("cylinder", $"Choose a {check.PlaceNoun} from 1 to {sheet.Cylinders}.");
        }

        return places;
    }

    private static int? Cylinder(string text, CheckSheet sheet) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        && number >= 1 && number <= sheet.Cylinders
            ? number
            : null;
}
