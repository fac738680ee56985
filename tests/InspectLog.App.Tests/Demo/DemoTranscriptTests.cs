using InspectLog.Checks;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;

namespace InspectLog.App.Tests.Demo;

/// <summary>The transcripts that come with the demo are what the speech model that comes with the program hears.
/// </summary>
[Trait("Takes", "long")]
public sealed class DemoTranscriptTests
{
    /// <summary>Findings are compared, not letters: another processor may round otherwise and write "6" for "six".
    /// </summary>
    [Fact]
    public async Task Shipped_model_hears_what_is_written_down()
    {
        var written = App.Demo.DemoFiles.Shipped().Transcripts();
        await using var speech = new WhisperSpeech(SpeechModels.Shipped());
        var reader = new FindingReader(BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!);
        var readiness = speech.Readiness;
        Assert.Equal((written.Model, written.ModelSha256), (readiness.Model, readiness.ModelSha256));

        foreach (var recording in DemoFiles.Story.Recordings)
        {
            var file = await File.ReadAllBytesAsync(DemoFiles.Recording(recording.File), TestContext.Current.CancellationToken);
            var audio = Assert.IsType<WavResult.Ok>(WavFile.Read(file)).Audio;
            var heard = await speech.TranscribeAsync(audio, null, TestContext.Current.CancellationToken);

            Assert.Equal(Meanings(written.Recordings.Single(one => one.File == recording.File).Text), Meanings(heard.Text));
        }

        IEnumerable<string> Meanings(string text) => reader.Read(text).Select(finding =>
            $"{finding.Kind} {finding.Check} {finding.Place?.Cylinder}: {finding.Value}{finding.Condition}{finding.Action}");
    }
}
