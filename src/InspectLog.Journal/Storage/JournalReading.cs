using System.Runtime.ExceptionServices;
using InspectLog.Journal.State;

namespace InspectLog.Journal.Storage;

/// <summary>Reads the journals of many vehicles, several at a time: each is checked line by line, which takes a
/// processor longer than it takes the disk.</summary>
internal static class JournalReading
{
    /// <summary>The journals, in the order of the vehicles.</summary>
    /// <param name="vehicles">The vehicles' ids.</param>
    /// <param name="open">Reads the journal of one.</param>
    /// <param name="progress">Is told after each; may be called by several threads at once.</param>
    /// <exception cref="IOException">One of them cannot be read.</exception>
    public static IReadOnlyList<OpenJournal<VehicleState>> Read(
        IReadOnlyList<string> vehicles, Func<string, OpenJournal<VehicleState>> open, IProgress<GarageOpening>? progress)
    {
        var journals = new OpenJournal<VehicleState>[vehicles.Count];
        var done = 0;
        try
        {
            Parallel.For(0, vehicles.Count, at =>
            {
                journals[at] = open(vehicles[at]);
                progress?.Report(new(OpeningStep.Reading, Interlocked.Increment(ref done), vehicles.Count));
            });
        }
        catch (AggregateException several)
        {
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }

        return journals;
    }
}
