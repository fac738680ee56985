using InspectLog.App.Media;
using InspectLog.Dictation.Hearing;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.App.Demo;

/// <summary>Plays the voice notes of the story: kept, heard, read for findings and, where the story says so,
/// confirmed.</summary>
internal sealed class VoicePlayer(DemoFiles files, Garage garage, SheetLibrary sheets, StoryClock clock)
{
    private static readonly TimeSpan UntilHeard = TimeSpan.FromSeconds(4);
    private static readonly TimeSpan UntilConfirmed = TimeSpan.FromSeconds(11);

    private readonly DemoTranscripts _transcripts = files.Transcripts();

    public void Play(SayStep say, string vehicleId, long number)
    {
        var bytes = File.ReadAllBytes(files.Recording(say.Recording));
        var audio = WavFile.Read(bytes) is WavResult.Ok recording
            ? recording.Audio
            : throw new InvalidDataException($"{say.Recording} of the demo is no recording.");
        var kept = new RecordingKept(number, garage.Media.Keep(bytes, MediaTypes.Wav), audio.Duration.TotalSeconds, say.OpenCheck);

        var scene = BenchScene.Find(garage, sheets, vehicleId, number)!;
        var sequence = scene.Vehicle.NextSequence;
        var technician = scene.Inspection.How.Technician;
        garage.Append(vehicleId, technician, _ => [kept]);

        clock.Now += UntilHeard;
        var heard = Transcript(say.Recording, audio.Duration);
        garage.Append(vehicleId, JournalEntry.Program, _ => HeardEntries.Of(
            sequence,
            kept,
            scene.Sheet,
            WorkshopWords.For(garage.Workshop, scene.Sheet),
            heard,
            _transcripts.Model,
            _transcripts.ModelSha256));

        if (say.Confirm)
        {
            clock.Now += UntilConfirmed;
            garage.Append(vehicleId, technician, now => [.. Confirmed(BenchScene.Of(now, sheets, number)!, sequence)]);
        }
    }

    private IEnumerable<EntryBody> Confirmed(BenchScene now, long recording) =>
        Comparing.Settled(now, Confirming.Bodies(
            now, garage.Workshop, ProposalCards.Of(now.Inspection.FindVoiceNote(recording)!, now, garage.Workshop)));

    private Transcript Transcript(string file, TimeSpan duration)
    {
        var heard = _transcripts.Recordings.First(recording => recording.File == file);
        return new Transcript(heard.Text, [.. Words(heard)], SpeechFound: true, duration);
    }

    private static IEnumerable<HeardWord> Words(DemoTranscript heard)
    {
        var from = 0;
        foreach (var word in heard.Words)
        {
            var at = heard.Text.IndexOf(word.Text, from, StringComparison.Ordinal);
            from = at + word.Text.Length;
            yield return new HeardWord(word.Text, word.Start, word.End, word.Probability, at);
        }
    }
}
