using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Words;
using InspectLog.Journal;

namespace InspectLog.App.Demo;

/// <summary>The invented garage that <c>demo</c> opens.</summary>
internal static class DemoGarage
{
    /// <summary>Makes it in a folder, as it stands now.</summary>
    public static void Make(string folder, TimeProvider time, DemoFiles files)
    {
        var clock = new StoryClock(time.LocalTimeZone);
        using var garage = Garage.Open(folder, clock, rules: SheetRules.Of, wording: SheetWording.Of);
        new StoryPlayer(files, garage, new(garage.Sheets), clock).Play(files.Story(), time.GetLocalNow());
    }
}
