using InspectLog.App.Media;
using InspectLog.Inspecting;
using InspectLog.Journal;

namespace InspectLog.App.Bench.Then;

/// <summary>A photo to be taken from the stand of an earlier one.</summary>
/// <param name="Scene">The inspection it is for.</param>
/// <param name="Like">The earlier photo.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record AgainView(BenchScene Scene, PhotoUse Like, IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>The check the photo is filed under; null where it is the inspection as a whole, or the sheet does not have the
    /// earlier one's.</summary>
    public string? Check => Like.Photo.Photo.Check is { } check && Scene.Sheet.Find(check) is not null ? check : null;

    /// <summary>The place it is filed under; null for none.</summary>
    public int? Place => Check is null ? null : Like.Photo.Photo.Cylinder;

    /// <summary>The bench, at the place the photo is of.</summary>
    public string BenchAddress => Check is null
        ? Links.Inspection(Scene.Vehicle.Id, Scene.Inspection.Number)
        : Links.Check(Scene.Vehicle.Id, Scene.Inspection.Number, Check, Place);
}
