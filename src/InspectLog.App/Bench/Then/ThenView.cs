using InspectLog.App.Media;
using InspectLog.Inspecting;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench.Then;

/// <summary>Two photos of one place, from two inspections.</summary>
/// <param name="Scene">The inspection of the photo one came from.</param>
/// <param name="Photo">The photo one came from.</param>
/// <param name="Others">The photos of the place in other inspections, the newest first.</param>
/// <param name="Other">The one that is compared; null where there is none.</param>
/// <param name="Laid">How they lie on each other; null where there is nothing to compare.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record ThenView(
    BenchScene Scene,
    PhotoCapture Photo,
    IReadOnlyList<PhotoUse> Others,
    PhotoUse? Other,
    LaidOver? Laid,
    IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>The earlier of the two.</summary>
    public PhotoUse Then => Other!.Photo.Time < Photo.Time ? Other : Mine;

    /// <summary>The later of the two.</summary>
    public PhotoUse Now => ReferenceEquals(Then, Other) ? Mine : Other!;

    private PhotoUse Mine => new(Scene.Vehicle, Scene.Inspection, Photo);
}
