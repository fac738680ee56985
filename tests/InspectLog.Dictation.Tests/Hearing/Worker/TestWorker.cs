using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Hearing.Worker;

namespace InspectLog.Dictation.Tests.Hearing.Worker;

/// <summary>Clients of the worker program made for the tests.</summary>
internal static class TestWorker
{
    public static SpeechWorkerPatience Patience { get; } = SpeechWorkerPatience.Usual with { BetweenStarts = TimeSpan.FromSeconds(0.5) };

    /// <summary>For workers that never take a step: short enough to wait for. How long a process takes to start is the
    /// machine's affair, so that is waited for as usual.</summary>
    public static SpeechWorkerPatience Impatience { get; } = Patience with { Step = TimeSpan.FromSeconds(4), AfterCancel = TimeSpan.FromSeconds(0.5) };

    /// <summary>When a test gives up waiting.</summary>
    public static TimeSpan GiveUp { get; } = TimeSpan.FromMinutes(5);

    public static SpeechWorkerCommand Command(params string[] arguments) =>
        new("dotnet", [Path.Combine(AppContext.BaseDirectory, "InspectLog.TestWorker.dll"), .. arguments]);

    public static SpeechWorkerClient Scripted(params string[] behaviours) => Client(Command(["scripted", .. behaviours]));

    public static SpeechWorkerClient Client(SpeechWorkerCommand command, SpeechWorkerPatience? patience = null) =>
        new(command, SpeechModels.Shipped(), patience ?? Patience, TimeProvider.System);
}
