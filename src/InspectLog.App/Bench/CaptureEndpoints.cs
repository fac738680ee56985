using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Listening;
using InspectLog.App.Media;
using InspectLog.Dictation.Hearing;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using System.Security.Cryptography;

namespace InspectLog.App.Bench;

/// <summary>Takes in voice notes and typed notes. Each is on disk before it is answered.</summary>
public static class CaptureEndpoints
{
    /// <summary>Room to receive a recording that is somewhat too long, so that its sender gets a sentence about it and
    /// not a broken connection.</summary>
    private const long LargestRecordingReceived = 2 * WavFile.LargestFile;

    public static void MapCaptures(this IEndpointRouteBuilder app)
    {
        var bench = app.MapInspection(Policies.Look, Policies.Record);
        bench.MapPost("/recordings", Recording)
            .WithName("keep-recording")
            .WithMetadata(new RequestSizeLimit(LargestRecordingReceived), new AnswersScripts());
        bench.MapPost("/notes", Note).WithName("keep-note");
    }

    /// <summary>Scripts send recordings, so the answer is JSON. A hands-free utterance can be a command, which must not
    /// be obeyed twice: one that comes again, because the answer to it got lost, is the same note.</summary>
    private static async Task<IResult> Recording(
        HttpContext context,
        BenchDesk desk,
        TranscriptionSignal signal,
        string vehicle,
        long number,
        string? check,
        bool handsFree = false)
    {
        var scene = desk.Scene;
        var bytes = await Body.ReadAsync(context.Request);
        if (WavFile.Read(bytes) is not WavResult.Ok { Audio: var audio })
        {
            var refused = (WavResult.Refused)WavFile.Read(bytes);
            return Results.UnprocessableEntity(new { message = refused.Message });
        }

        var recorded = desk.Record(scene, now =>
        {
            // Kept inside the journal's lock, so that a closed inspection leaves no recording behind that nothing names.
            var media = desk.Garage.Media.Keep(bytes, MediaTypes.Wav);
            return SaidBefore(now, media, handsFree) is null ? [Kept(now, media, audio, check, handsFree)] : [];
        });
        var recording = desk.RecordedBefore(recorded) ?? NewestOf(recorded, bytes);
        signal.Raise();
        return Results.Created((string?)null, new { recording });
    }

    private static RecordingKept Kept(BenchScene scene, MediaFile media, PcmAudio audio, string? check, bool handsFree)
    {
        var openCheck = scene.Sheet.Find(check ?? "")?.Id;
        return handsFree
            ? new UtteranceKept(scene.Inspection.Number, media, audio.Duration.TotalSeconds, openCheck)
            : new RecordingKept(scene.Inspection.Number, media, audio.Duration.TotalSeconds, openCheck);
    }

    // Withdrawn ones as well: a phone may send again what it kept.
    private static IEnumerable<VoiceNote> Kept(BenchScene scene) => scene.Inspection.Everything.OfType<VoiceNote>();

    private static VoiceNote? SaidBefore(BenchScene scene, MediaFile media, bool handsFree) =>
        handsFree ? Kept(scene).FirstOrDefault(note => note.Recording.Media == media) : null;

    private static long NewestOf(BenchScene scene, byte[] recording)
    {
        var sha256 = Convert.ToHexStringLower(SHA256.HashData(recording));
        return Kept(scene).Last(note => note.Recording.Media.Sha256 == sha256).Sequence;
    }

    private static async Task<IResult> Note(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        var scene = desk.Scene;
        var form = await PostedForm.ReadAsync(context.Request);
        var text = form.Required("text", "Write a few words first.");
        return form.IsValid
            ? desk.Show(context, desk.Record(scene, now => TypedNotes.Entries(
                now, desk.Garage.Workshop, new NoteWritten(number, now.Sheet.Find(form.Text("check"))?.Id, text))))
            : desk.Show(context, scene, form.Refused("note"));
    }
}
