using InspectLog.App.Commands;

namespace InspectLog.App.Tests.Commands;

public sealed class UnderstandVerbTests
{
    private static readonly string[] Json = ["understand", "--sheet", "ignition-breakerless-6", "--json"];

    [Fact]
    public async Task Json_gives_each_finding_with_every_documented_member()
    {
        const string text = "Coil secondary is 9.4 kilohms.";

        var run = await CommandRun.OfAsync([.. Json, text]);

        var words = run.Out.Split("\"words\":\"")[1].Split('"')[0];
        var start = text.IndexOf(words, StringComparison.Ordinal);
        Assert.Equal(
            $$"""{"findings":[{"kind":"reading","check":"coil-secondary-resistance","place":null,"value":9400,"unit":"Ω","bracket":null,"condition":null,"negated":false,"action":null,"words":"{{words}}","start":{{start}},"end":{{start + words.Length}},"doubt":null}]}""",
            Assert.Single(run.Lines));
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Fact]
    public async Task Bracket_place_condition_and_action_have_the_documented_form()
    {
        var run = await CommandRun.WithAsync(
            new Web.ScriptedSpeech(), "Air gap: 0.3 goes, 0.35 does not.\nLead three is burnt, replaced it.\n", Json);

        Assert.Contains("\"value\":null,\"unit\":\"mm\",\"bracket\":{\"goes\":0.3,\"stops\":0.35}", run.Lines[0], StringComparison.Ordinal);
        Assert.Contains("\"kind\":\"observation\",\"check\":\"lead-condition\",\"place\":{\"cylinder\":3}", run.Lines[1], StringComparison.Ordinal);
        Assert.Contains("\"condition\":\"burnt\",\"negated\":false,\"action\":null", run.Lines[1], StringComparison.Ordinal);
        Assert.Contains("\"kind\":\"action\",\"check\":\"lead-condition\"", run.Lines[1], StringComparison.Ordinal);
        Assert.Contains("\"action\":\"replaced\"", run.Lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Each_line_of_standard_input_is_answered_also_the_empty_ones()
    {
        var run = await CommandRun.WithAsync(new Web.ScriptedSpeech(), "Nothing to report.\n\nRemind me to buy oil.", Json);

        Assert.Equal(["{\"findings\":[]}", "{\"findings\":[]}", "{\"findings\":[]}"], run.Lines);
    }

    [Fact]
    public async Task A_line_is_answered_before_the_next_is_there()
    {
        using var output = new StringWriter();
        using var input = new AnsweredFirst(output, "Coil secondary 9.4 k", "Coil secondary 9.5 k");
        var surroundings = new Surroundings(input, output, TextWriter.Null, TimeProvider.System, _ => new Web.ScriptedSpeech(), _ => new Web.ScriptedSpeech());

        await CommandLine.RunAsync(Json, surroundings, TestContext.Current.CancellationToken);

        Assert.Equal([0, 1, 2], input.AnswersBeforeEachLine);
    }

    [Fact]
    public async Task Text_names_check_value_and_words()
    {
        var run = await CommandRun.OfAsync("understand", "--sheet", "ignition-breakerless-6", "Coil secondary is 9.4 kilohms.");

        Assert.Contains("coil-secondary-resistance: 9.4\u00a0kΩ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Text_that_begins_with_an_at_sign_is_no_file_to_read()
    {
        var run = await CommandRun.OfAsync([.. Json, "@/etc/hostname"]);

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Single(run.Lines);
    }

    [Fact]
    public async Task Without_a_sheet_it_says_which_there_are()
    {
        var run = await CommandRun.OfAsync("understand", "--sheet", "brakes", "text");

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("ignition-breakerless-6", run.Error, StringComparison.Ordinal);
    }

    /// <summary>Standard input that notes how much was answered when each next line was asked for.</summary>
    private sealed class AnsweredFirst(StringWriter output, params string[] lines) : TextReader
    {
        private readonly Queue<string> _lines = new(lines);

        public List<int> AnswersBeforeEachLine { get; } = [];

        public override ValueTask<string?> ReadLineAsync(CancellationToken cancellationToken)
        {
            AnswersBeforeEachLine.Add(output.ToString().Count(letter => letter == '\n'));
            return new(_lines.TryDequeue(out var line) ? line : null);
        }
    }
}
