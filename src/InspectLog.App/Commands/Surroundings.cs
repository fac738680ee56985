using InspectLog.Dictation.Hearing;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Commands;

/// <summary>What the verbs take from the process, so that tests can give them something else.</summary>
/// <param name="In">Standard input.</param>
/// <param name="Out">Standard output: results only.</param>
/// <param name="Error">Standard error: what went wrong and what to do.</param>
/// <param name="Time">The clock.</param>
/// <param name="OpenSpeech">Opens speech recognition with the model file given, or with the one that comes with the
/// program.</param>
/// <param name="OpenSpeechApart">The same for a program that must not fall with it.</param>
internal sealed record Surroundings(
    TextReader In,
    TextWriter Out,
    TextWriter Error,
    TimeProvider Time,
    Func<string?, ISpeechToText> OpenSpeech,
    Func<string?, ISpeechToText> OpenSpeechApart)
{
    /// <summary>Shows an address in the user's own browser; false where there is none.</summary>
    public Func<Uri, bool> Browse { get; init; } = OwnBrowser.Show;

    /// <summary>Is told the folder for uploads while they come in; the server reads it once, for the whole process.</summary>
    public Action<string> KeepUploadsIn { get; init; } = static _ => { };

    /// <summary>Opens what makes copies of photos: apart from this process, so that a hostile picture costs itself alone.</summary>
    public Func<IPhotoDeveloper> OpenPhotos { get; init; } = static () => new PhotoDeveloper();

    public static Surroundings OfProcess() =>
        new(Console.In, Console.Out, Console.Error, TimeProvider.System, SpeechModelChoice.Open, SpeechModelChoice.OpenApart)
        {
            OpenPhotos = () => PhotoWorkerVerb.Open(TimeProvider.System),
            KeepUploadsIn = folder => Environment.SetEnvironmentVariable("ASPNETCORE_TEMP", folder),
        };
}
