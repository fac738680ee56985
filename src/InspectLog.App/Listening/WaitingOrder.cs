using InspectLog.Journal.Index;

namespace InspectLog.App.Listening;

/// <summary>Which of the waiting recordings comes next. Pure.</summary>
public static class WaitingOrder
{
    /// <summary>The newest of an inspection somebody has open before them; else the newest of all. Null when none waits.</summary>
    /// <param name="waiting">Those that wait, oldest first.</param>
    /// <param name="isOpen">Whether somebody has an inspection open, by its vehicle and number.</param>
    public static WaitingRecording? Next(IEnumerable<WaitingRecording> waiting, Func<string, long, bool> isOpen)
    {
        var all = waiting.ToArray();
        return all.LastOrDefault(one => isOpen(one.VehicleId, one.Inspection)) ?? all.LastOrDefault();
    }
}
