using InspectLog.Dictation.Hearing;
using InspectLog.Journal;

namespace InspectLog.App.Hosting;

/// <summary>How the web app is started.</summary>
/// <param name="DataFolder">Folder of the journals and media.</param>
/// <param name="Port">TCP port on the loopback interface; 0 takes a free one.</param>
/// <param name="Speech">Makes the speech-to-text engine.</param>
public sealed record WebHostOptions(string DataFolder, int Port, Func<ISpeechToText> Speech)
{
    /// <summary>Clock of the journal entries.</summary>
    public TimeProvider Time { get; init; } = TimeProvider.System;

    /// <summary>Is told how far the opening of the data folder is.</summary>
    public IProgress<GarageOpening>? Opening { get; init; }

    /// <summary>Called once with the address the app listens on.</summary>
    public Action<Uri> Listening { get; init; } = static _ => { };
}
