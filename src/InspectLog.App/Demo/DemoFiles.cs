using System.Text.Json;

namespace InspectLog.App.Demo;

/// <summary>The files of the demo garage, which lie beside the program.</summary>
internal sealed class DemoFiles(string folder)
{
    public static DemoFiles Shipped() => new(Path.Combine(AppContext.BaseDirectory, "demo"));

    public Story Story() => Demo.Story.Read(File.ReadAllBytes(Path.Combine(folder, "garage.json")));

    public DemoTranscripts Transcripts() => JsonSerializer.Deserialize<DemoTranscripts>(
        File.ReadAllBytes(Path.Combine(folder, "transcripts.json")), JsonSerializerOptions.Web)!;

    public string Recording(string file) => Path.Combine(folder, "recordings", file);

    public string Photo(string file) => Path.Combine(folder, "photos", file);
}

/// <summary>What the speech model that comes with the program heard in the recordings of the story. Written down so
/// that the demo opens at once; a test holds it to what the model hears.</summary>
/// <param name="Recordings">As <c>inspectlog transcribe --json</c> writes them, without folders.</param>
internal sealed record DemoTranscripts(string Model, string ModelSha256, IReadOnlyList<DemoTranscript> Recordings);

/// <summary>What was heard in one recording; times in seconds from its start.</summary>
internal sealed record DemoTranscript(string File, string Text, IReadOnlyList<DemoWord> Words);

/// <summary>A heard word.</summary>
internal sealed record DemoWord(string Text, double Start, double End, double Probability);
