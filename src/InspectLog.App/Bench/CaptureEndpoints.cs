using InspectLog.App.Forms;
using InspectLog.App.Listening;
using InspectLog.App.Media;
using InspectLog.Dictation.Hearing;
using InspectLog.Journal.Entries;
using InspectLog.Photos;

namespace InspectLog.App.Bench;

/// <summary>Takes in voice notes, photos and typed notes. Each is on disk before it is answered.</summary>
public static class CaptureEndpoints
{
    /// <summary>Photos taken at once; more are sent in a second go.</summary>
    private const int MostPhotos = 12;

    /// <summary>Room to receive a recording that is somewhat too long, so that its sender gets a sentence about it and
    /// not a broken connection.</summary>
    private const long LargestRecordingReceived = 2 * WavFile.LargestFile;

    public static void MapCaptures(this IEndpointRouteBuilder app)
    {
        var bench = app.MapGroup(BenchEndpoints.Base);
        bench.MapPost("/recordings", Recording)
            .WithName("keep-recording")
            .WithMetadata(new RequestSizeLimit(LargestRecordingReceived));
        bench.MapPost("/photos", Photos)
            .WithName("keep-photos")
            .WithMetadata(new RequestSizeLimit((long)MostPhotos * PhotoIntake.LargestFile));
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
        if (desk.Find(vehicle, number) is not { } scene)
        {
            return Results.NotFound(new { message = "There is no such inspection. The recording was not kept." });
        }

        var bytes = await Body.ReadAsync(context.Request);
        if (WavFile.Read(bytes) is not WavResult.Ok { Audio: var audio })
        {
            var refused = (WavResult.Refused)WavFile.Read(bytes);
            return Results.UnprocessableEntity(new { message = refused.Message });
        }

        var media = desk.Garage.Media.Keep(bytes, MediaTypes.Wav);
        long recording = 0;
        desk.Record(scene, now =>
        {
            var openCheck = scene.Sheet.Find(check ?? "")?.Id;
            if (handsFree && now.Inspection.VoiceNotes.FirstOrDefault(note => note.Recording.Media == media) is { } same)
            {
                recording = same.Sequence;
                return [];
            }

            recording = now.Vehicle.NextSequence;
            return
            [
                handsFree
                    ? new UtteranceKept(number, media, audio.Duration.TotalSeconds, openCheck)
                    : new RecordingKept(number, media, audio.Duration.TotalSeconds, openCheck),
            ];
        });
        signal.Raise();
        return Results.Created((string?)null, new { recording });
    }

    private static async Task<IResult> Photos(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        if (desk.Find(vehicle, number) is not { } scene)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var check = scene.Sheet.Find(form.Text("check"));
        var cylinder = check is { PerCylinder: true } ? form.Whole("cylinder", "Choose a place from the list.") : null;
        if (form.Files.Count == 0)
        {
            form.Refuse("photo", "Choose at least one photo.");
        }
        else if (form.Files.Count > MostPhotos)
        {
            form.Refuse("photo", $"Send at most {MostPhotos} photos at once.");
        }

        if (!form.IsValid)
        {
            return desk.Show(context, scene, form.Refused("photo"));
        }

        // Photos that are good are kept even where another of the same batch is refused.
        foreach (var file in form.Files)
        {
            var bytes = await Body.ReadAsync(file, PhotoIntake.LargestFile, context.RequestAborted);
            switch (PhotoIntake.Examine(bytes))
            {
                case PhotoResult.Ok { Facts: var facts }:
                    var media = desk.Garage.Media.Keep(bytes, MediaTypes.Of(facts.Format));
                    scene = desk.Record(
                        scene, new PhotoKept(number, media, facts.Width, facts.Height, check?.Id, cylinder));
                    break;
                case PhotoResult.Refused { Message: var message }:
                    form.Refuse("photo", $"{Path.GetFileName(file.FileName)}: {message}");
                    break;
            }
        }

        return desk.Show(context, scene, form.IsValid ? null : form.Refused("photo"));
    }

    private static async Task<IResult> Note(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        if (desk.Find(vehicle, number) is not { } scene)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var text = form.Required("text", "Write a few words first.");
        return form.IsValid
            ? desk.Show(context, desk.Record(scene, new NoteWritten(number, scene.Sheet.Find(form.Text("check"))?.Id, text)))
            : desk.Show(context, scene, form.Refused("note"));
    }
}
