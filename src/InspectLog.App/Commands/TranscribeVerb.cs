using System.CommandLine;
using InspectLog.App.Commands.Json;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;
using InspectLog.Dictation.Understanding.Vocabulary;

namespace InspectLog.App.Commands;

/// <summary>Transcribes recordings, offline, and reads findings from them when a sheet is given.</summary>
internal sealed class TranscribeVerb : Verb
{
    private readonly Option<string?> _sheet = SheetChoice.Option();
    private readonly Option<int?> _cylinders = SheetChoice.CylindersOption();
    private readonly Option<string?> _data = OwnWordsChoice.Option();
    private readonly Option<string?> _model = SpeechModelChoice.Option();
    private readonly Option<bool> _json = JsonLines.Option();

    private readonly Argument<string[]> _files = new("FILE.wav")
    {
        Description = "Recordings: WAV, 16 kHz, mono, 16 bit, 10 minutes at most.",
        Arity = ArgumentArity.OneOrMore,
    };

    public TranscribeVerb(Surroundings surroundings)
        : base("transcribe", "Turn recordings into text, offline; with a sheet, read the findings they hold as well.", surroundings)
    {
        _files.Validators.Add(given => PathGiven.RefuseEmpty(given, "FILE.wav is empty: name a recording."));
        Add(_files);
        Add(_sheet);
        Add(_cylinders);
        Add(_data);
        Add(_model);
        Add(_json);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog transcribe note.wav",
        "inspectlog transcribe *.wav --sheet ignition-breakerless --json",
        "inspectlog transcribe note.wav --sheet ignition-breakerless --data /srv/garage",
    ];

    /// <summary>A file that cannot be used is told of and passed over; the others are still transcribed.</summary>
    protected override async Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var reader = Reader(arguments.GetValue(_sheet), arguments.GetValue(_cylinders), arguments.GetValue(_data));
        var examples = reader is null ? null : ExampleFindings.Prompt(reader.Sheet, openCheck: null, reader.OwnWords);
        var json = arguments.GetValue(_json);
        var speech = Surroundings.OpenSpeech(arguments.GetValue(_model));
        await using var closing = speech as IAsyncDisposable;

        var exitCode = ExitCodes.Done;
        foreach (var file in arguments.GetRequiredValue(_files))
        {
            if (RecordingFile.TryRead(file, out var audio, out var problem))
            {
                Answer(file, await speech.TranscribeAsync(audio, examples, progress: null, stop), reader, json);
            }
            else
            {
                Refuse(file, problem, json);
                exitCode = ExitCodes.BadInput;
            }
        }

        return exitCode;
    }

    private static FindingReader? Reader(string? sheet, int? cylinders, string? data) => (sheet, cylinders, data) switch
    {
        ({ } id, _, _) => OwnWordsChoice.Reader(SheetChoice.Find(id, cylinders), data),
        (null, { }, _) => throw CommandException.BadInput("--cylinders is of use with a check sheet only. Name one with --sheet ID or --sheet FILE."),
        (null, null, { }) => throw CommandException.BadInput("--data is of use with a check sheet only: its words are words for what is on the sheet. Name one with --sheet ID or --sheet FILE."),
        _ => null,
    };

    private void Answer(string file, Transcript transcript, FindingReader? reader, bool json)
    {
        var findings = reader?.Read(transcript);
        if (json)
        {
            Surroundings.Out.WriteJson(TranscriptJson.From(file, transcript, reader is null ? null : FindingsJson.From(findings!, reader.Sheet)));
            return;
        }

        Surroundings.Out.WriteLine($"{file}: {(transcript.SpeechFound ? transcript.Text : "no speech found")}");
        if (reader is not null)
            Surroundings.Out.WriteFindings(findings!, reader.Sheet);
    }

    private void Refuse(string file, string message, bool json)
    {
        Surroundings.Error.WriteLine($"{file}: {message}");
        if (json)
            Surroundings.Out.WriteJson(new ProblemJson(file, message));
    }
}
