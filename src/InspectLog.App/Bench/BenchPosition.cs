using System.Globalization;
using InspectLog.Dictation.Hearing;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>How far a page of the bench is: a page that says so is told at once whether it has missed something, after the
/// device slept or the network was gone, and is not sent what it shows already.</summary>
public static class BenchPosition
{
    /// <summary>Of the journal's next entry, and of whether speech is heard, which the bench says too.</summary>
    public static string Of(VehicleState vehicle, SpeechReadiness speech)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(speech);
        return string.Create(CultureInfo.InvariantCulture, $"{vehicle.NextSequence}{(speech.Ready ? "" : "-deaf")}");
    }
}
