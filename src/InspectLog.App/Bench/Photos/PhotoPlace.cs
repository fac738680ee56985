using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Inspecting.Standing;

namespace InspectLog.App.Bench.Photos;

/// <summary>Where a photo is filed, as a form names it.</summary>
/// <param name="Check">Check id; null for the inspection as a whole.</param>
/// <param name="Cylinder">The place; null for the check as a whole.</param>
public sealed record PhotoPlace(string? Check, int? Cylinder)
{
    /// <summary>Reads the fields <c>check</c> and <c>cylinder</c>: none, one, or several of which one has to be chosen
    /// later. A wrong one is noted on the form.</summary>
    public static PhotoPlace Read(PostedForm form, CheckSheet sheet) =>
        form.Text("check") is { Length: > 0 } id ? Of(form, sheet, id, form.All("cylinder")) : new(null, null);

    /// <summary>Reads the field <c>where</c>: a check, or a check and its place: "lead-condition/2". Empty is the
    /// inspection as a whole.</summary>
    public static PhotoPlace ReadWhere(PostedForm form, CheckSheet sheet)
    {
        var parts = form.Text("where").Split('/');
        return parts[0].Length == 0 ? new(null, null) : Of(form, sheet, parts[0], [.. parts[1..].Where(part => part.Length > 0)]);
    }

    private static PhotoPlace Of(PostedForm form, CheckSheet sheet, string id, IReadOnlyList<string> places)
    {
        if (sheet.Find(id) is not { } check)
        {
            form.Refuse("photo", "This sheet has no such check. Choose where the photo belongs from the list.");
            return new(null, null);
        }

        var known = Places.Of(sheet, check).Select(Links.Place).Where(place => place.Length > 0).ToList();
        var named = places.Where(place => place != "all").ToList();
        if (named.Except(known).Any())
        {
            form.Refuse("photo", check.PerCylinder
                ? $"This sheet has no such {check.PlaceNoun}. {Places.Asked(sheet, check)}"
                : Places.Asked(sheet, check));
            return new(check.Id, null);
        }

        return new(check.Id, places.Count == 1 && named.Count == 1 ? int.Parse(named[0], CultureInfo.InvariantCulture) : null);
    }
}
