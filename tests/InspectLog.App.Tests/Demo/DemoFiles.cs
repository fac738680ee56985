using InspectLog.App.Demo;

namespace InspectLog.App.Tests.Demo;

/// <summary>The demo garage as it lies beside the program.</summary>
internal static class DemoFiles
{
    public static string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "demo");

    public static Story Story { get; } = Story.Read(File.ReadAllBytes(Path.Combine(Folder, "garage.json")));

    public static string Recording(string file) => Path.Combine(Folder, "recordings", file);

    public static string Photo(string file) => Path.Combine(Folder, "photos", file);

    /// <summary>Every inspection with its vehicle.</summary>
    public static IEnumerable<(StoryVehicle Vehicle, StoryInspection Inspection)> Inspections =>
        from vehicle in Story.Vehicles
        from inspection in vehicle.Inspections
        select (vehicle, inspection);

    /// <summary>Every step of one kind, with where it stands.</summary>
    public static IEnumerable<(StoryVehicle Vehicle, StoryInspection Inspection, T Step)> Steps<T>() =>
        from part in Inspections
        from step in part.Inspection.Steps.Select(step => step.What).OfType<T>()
        select (part.Vehicle, part.Inspection, step);
}
