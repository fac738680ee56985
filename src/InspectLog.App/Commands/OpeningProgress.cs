using InspectLog.Journal;

namespace InspectLog.App.Commands;

/// <summary>Says how far the opening of a data folder is, once it has taken a second, and then once a second.</summary>
internal sealed class OpeningProgress(TextWriter writer, TimeProvider time) : IProgress<GarageOpening>
{
    private static readonly TimeSpan BetweenLines = TimeSpan.FromSeconds(1);

    private readonly Lock _gate = new();
    private long _lastLine = time.GetTimestamp();

    public void Report(GarageOpening value)
    {
        lock (_gate)
        {
            if (time.GetElapsedTime(_lastLine) >= BetweenLines)
            {
                _lastLine = time.GetTimestamp();
                writer.WriteLine($"{Words(value.Step)}: {value.Done} of {value.Of}");
            }
        }
    }

    private static string Words(OpeningStep step) => step switch
    {
        OpeningStep.Reading => "Journals read",
        _ => "Journals put into lists and search",
    };
}
