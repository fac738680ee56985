using System.CommandLine;
using InspectLog.App.Commands.Json;
using InspectLog.Dictation.Understanding;

namespace InspectLog.App.Commands;

/// <summary>Reads findings from texts.</summary>
internal sealed class UnderstandVerb : Verb
{
    private readonly Option<string> _sheet = SheetChoice.RequiredOption();
    private readonly Option<int?> _cylinders = SheetChoice.CylindersOption();
    private readonly Option<string?> _data = OwnWordsChoice.Option();
    private readonly Option<bool> _json = JsonLines.Option();

    private readonly Argument<string?> _text = new("TEXT")
    {
        Description = "What was said. Without it, texts are read from standard input, one a line, and answered as they come.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public UnderstandVerb(Surroundings surroundings)
        : base("understand", "Read the findings a text holds: which check, which cylinder, which value, condition or action.", surroundings)
    {
        Add(_sheet);
        Add(_cylinders);
        Add(_data);
        Add(_json);
        Add(_text);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog understand --sheet ignition-breakerless \"coil secondary is 9.4 k, number three lead is burnt\"",
        "inspectlog understand --sheet ignition-breakerless --json < notes.txt",
        "inspectlog understand --sheet ignition-breakerless --cylinders 4 \"plugs two and three are sooty\"",
        "inspectlog understand --sheet ignition-breakerless --data /srv/garage \"sparkler three is wet\"",
    ];

    protected override async Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var reader = OwnWordsChoice.Reader(SheetChoice.Find(arguments.GetRequiredValue(_sheet), arguments.GetValue(_cylinders)), arguments.GetValue(_data));
        var json = arguments.GetValue(_json);
        if (arguments.GetValue(_text) is { } text)
        {
            Answer(reader, text, json);
            return ExitCodes.Done;
        }

        while (await Surroundings.In.ReadLineAsync(stop) is { } line)
            Answer(reader, line, json);
        return ExitCodes.Done;
    }

    private void Answer(FindingReader reader, string text, bool json)
    {
        var findings = reader.Read(text);
        if (json)
            Surroundings.Out.WriteJson(FindingsJson.From(findings, reader.Sheet));
        else
            Surroundings.Out.WriteFindings(findings, reader.Sheet);
    }
}
