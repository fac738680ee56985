using InspectLog.App.Access;
using InspectLog.App.Bench;
using InspectLog.App.Listening;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Bench;

/// <summary>Leaves a voice note unread, or has it read after all.</summary>
public static class VoiceNoteEndpoints
{
    public static void MapVoiceNotes(this IEndpointRouteBuilder app)
    {
        var note = app.MapInspection(Policies.Look, Policies.Record, "/recordings/{recording:long}");
        note.MapPost("/cancel", Cancel).WithName("cancel-transcript");
        note.MapPost("/transcribe", Transcribe).WithName("ask-transcript");
    }

    private static IResult Cancel(
        HttpContext context,
        BenchDesk desk,
        RunningTranscription running,
        SpokenControl control,
        string vehicle,
        long number,
        long recording)
    {
        var scene = desk.Scene;
        if (scene.Inspection.FindVoiceNote(recording) is null)
        {
            return Results.NotFound();
        }

        // Recorded first: the worker looks once more before it starts, and again before it writes.
        scene = desk.Record(scene, now =>
            now.Inspection.FindVoiceNote(recording) is { IsWaiting: true } ? [new TranscriptCancelled(recording)] : []);
        if (scene.Inspection.FindVoiceNote(recording) is { IsCancelled: true })
        {
            running.Cancel(vehicle, recording);

            // A spoken command may have waited for this note.
            control.Obey(vehicle, number);
        }

        return desk.Show(context, desk.Reread());
    }

    private static IResult Transcribe(
        HttpContext context, BenchDesk desk, TranscriptionSignal signal, string vehicle, long number, long recording)
    {
        var scene = desk.Scene;
        if (scene.Inspection.FindVoiceNote(recording) is not { } note)
        {
            return Results.NotFound();
        }

        // One that came in with an archive is of an inspection that was closed elsewhere.
        scene = desk.Record(
            scene,
            now => now.Inspection.FindVoiceNote(recording) is { IsSetAside: true } ? [new TranscriptAsked(recording)] : [],
            afterClosing: note.AwaitsAsking);
        signal.Raise();
        return desk.Show(context, scene);
    }
}
