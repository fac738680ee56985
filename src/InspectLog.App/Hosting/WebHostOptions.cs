using InspectLog.App.Network;
using InspectLog.Dictation.Hearing;
using InspectLog.Journal;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Hosting;

/// <summary>How the web app is started.</summary>
/// <param name="DataFolder">Folder of the journals and media.</param>
/// <param name="Port">TCP port on the loopback interface; 0 takes a free one.</param>
/// <param name="Speech">Makes the speech-to-text engine.</param>
public sealed record WebHostOptions(string DataFolder, int Port, Func<ISpeechToText> Speech)
{
    /// <summary>Clock of the journal entries.</summary>
    public TimeProvider Time { get; init; } = TimeProvider.System;

    /// <summary>Makes what develops photos. In this process, where nothing else is said: a picture that never ends would
    /// hold up whoever asks for it, so the program itself says otherwise.</summary>
    public Func<IPhotoDeveloper> Photos { get; init; } = static () => new PhotoDeveloper();

    /// <summary>Is told how far the opening of the data folder is.</summary>
    public IProgress<GarageOpening>? Opening { get; init; }

    /// <summary>Whether the speech model is loaded at the start, or with the first recording.</summary>
    public bool LoadsSpeechAtStart { get; init; } = true;

    /// <summary>How it is open to the local network; null keeps it to this computer.</summary>
    public NetworkOptions? Network { get; init; }

    /// <summary>Whether the data folder is only looked at.</summary>
    public bool IsLookedAtOnly { get; init; }

    /// <summary>Whether the garage says when the last backup is old, as an invented one does not.</summary>
    public bool RemindsOfBackups { get; init; } = true;

    /// <summary>Is told the folder that takes uploads while they come in, before the first can.</summary>
    public Action<string> KeepUploadsIn { get; init; } = static _ => { };

    /// <summary>Called once with where the app can be reached.</summary>
    public Action<OpenAddresses> Listening { get; init; } = static _ => { };
}
