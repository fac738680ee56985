using System.Runtime.InteropServices;

namespace InspectLog.App.Commands;

/// <summary>Keeps a worker from ending by the signals that end the app: Ctrl+C and those of a service manager reach both
/// processes, and the app is to put its work in order first. A worker ends when the app closes its end.</summary>
internal sealed class WorkerSignals : IDisposable
{
    private readonly IReadOnlyList<PosixSignalRegistration> _ignored =
        [.. new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP }.Select(Ignore)];

    public void Dispose()
    {
        foreach (var one in _ignored)
        {
            one.Dispose();
        }
    }

    private static PosixSignalRegistration Ignore(PosixSignal signal) =>
        PosixSignalRegistration.Create(signal, context => context.Cancel = true);
}
