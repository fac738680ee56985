using InspectLog.App.Bench.Photos;
using InspectLog.App.Media;
using InspectLog.Inspecting;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Vehicles.Wall;

/// <summary>All photos of a vehicle, part by part.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Parts">Part by part, in the order of the check sheets; the inspections as a whole come last.</param>
/// <param name="Only">The one part that is shown, with all its photos; null where all parts are.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record WallView(VehicleState Vehicle, IReadOnlyList<WallPart> Parts, WallPart? Only, IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>So many photos of a part stand on the wall; the rest is a press away.</summary>
    public const int Most = 6;

    /// <summary>Gathers them. Pure.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="sheets">The sheets, which name the parts.</param>
    /// <param name="part">Key of the one part to show; null for all.</param>
    /// <param name="problems">Trouble with the garage.</param>
    /// <returns>Null where there is no such part.</returns>
    public static WallView? Of(VehicleState vehicle, SheetLibrary sheets, string? part, IReadOnlyList<GarageProblem> problems)
    {
        var parts = PhotoUse.In(vehicle)
            .GroupBy(use => (use.Photo.Photo.Check, use.Photo.Photo.Cylinder))
            .Select(group => WallPart.Of(sheets, [.. group.OrderByDescending(use => use.Photo.Time)]))
            .OrderBy(one => one.Order)
            .ThenBy(one => one.Title, StringComparer.Ordinal)
            .ToList();
        var only = part is null ? null : parts.Find(one => one.Key == part);
        return part is not null && only is null ? null : new(vehicle, parts, only, problems);
    }
}

/// <summary>The photos of one part.</summary>
/// <param name="Key">Names it in addresses.</param>
/// <param name="Title">Names it for people: "Lead condition, lead 2".</param>
/// <param name="Order">Where it stands on its sheet: check, then place.</param>
/// <param name="Photos">The photos, the newest first.</param>
public sealed record WallPart(string Key, string Title, (int Check, int Place) Order, IReadOnlyList<PhotoUse> Photos)
{
    private const string Whole = "whole";

    /// <summary>How many inspections they are from.</summary>
    public int Inspections => Photos.Select(use => use.Inspection.Number).Distinct().Count();

    internal static WallPart Of(SheetLibrary sheets, IReadOnlyList<PhotoUse> photos)
    {
        var (newest, said) = (photos[0], photos[0].Photo.Photo);
        var key = said.Check is not { } check ? Whole : said.Cylinder is null ? check : $"{check}-{Links.Place(said.Cylinder)}";
        var sheet = sheets.Of(newest.Inspection);
        var at = sheet?.Checks.TakeWhile(one => one.Id != said.Check).Count() ?? int.MaxValue;
        var title = said.Check is null ? "The inspections as a whole" : sheet is null ? said.Check : PhotoWords.FiledUnder(sheet, said);
        return new(key, title, (at, said.Cylinder ?? 0), photos);
    }
}
