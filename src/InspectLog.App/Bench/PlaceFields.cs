using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Inspecting.Standing;
using System.Globalization;

namespace InspectLog.App.Bench;

/// <summary>A check and a place, as a form names them.</summary>
public sealed record CheckPlace(Check Check, int? Cylinder);

/// <summary>Reads the fields <c>check</c> and <c>cylinder</c>. A wrong one is noted on the form.</summary>
public static class PlaceFields
{
    /// <summary>A check with one place; null when the check is wrong.</summary>
    public static CheckPlace? Read(PostedForm form, CheckSheet sheet)
    {
        var places = ReadSeveral(form, sheet, out var check);
        if (check is not null && places.Count > 1)
        {
            form.Refuse("cylinder", $"Choose one {check.PlaceNoun}: this is of one alone.");
        }

        return check is null ? null : new CheckPlace(check, places.Count > 0 ? places[0] : null);
    }

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

        return Ticked(form, sheet, check);
    }

    /// <summary>The places ticked of a check that has several; at least one when the form is valid. The word <c>all</c>
    /// stands for each of them.</summary>
    public static IReadOnlyList<int?> Ticked(PostedForm form, CheckSheet sheet, Check check)
    {
        var texts = form.All("cylinder");
        if (texts.Contains("all"))
        {
            return [.. Places.Of(sheet, check)];
        }

        var places = texts.Select(text => Place(text, sheet, check)).Distinct().ToList();
        if (places.Count == 0 || places.Contains(null))
        {
            form.Refuse("cylinder", Places.Asked(sheet, check));
        }

        return places;
    }

    private static int? Place(string text, CheckSheet sheet, Check check) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        && sheet.PlacesOf(check).Contains(number)
            ? number
            : null;
}
