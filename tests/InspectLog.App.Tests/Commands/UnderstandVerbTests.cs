using InspectLog.App.Commands;

namespace InspectLog.App.Tests.Commands;

public sealed class UnderstandVerbTests
{
    private static readonly string[] Json = ["understand", "--sheet", "ignition-breakerless", "--json"];

    [Fact]
    public async Task Json_gives_each_finding_with_every_documented_member()
    {
        const string text = "Coil secondary is 9.4 kilohms.";

        var run = await CommandRun.OfAsync([.. Json, text]);

        var words = run.Out.Split("\"words\":\"")[1].Split('"')[0];
        var start = text.IndexOf(words, StringComparison.Ordinal);
        Assert.Equal(
            $$"""{"findings":[{"kind":"reading","check":"coil-secondary-resistance","place":null,"value":9400,"unit":"Ω","bracket":null,"condition":null,"negated":false,"action":null,"words":"{{words}}","start":{{start}},"end":{{start + words.Length}},"doubts":[],"doubt":null}]}""",
            Assert.Single(run.Lines));
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Fact]
    public async Task Doubts_are_given_by_kind_with_their_arguments_and_in_words()
    {
        var run = await CommandRun.OfAsync([.. Json, "Coil secondary is 94 k, I think."]);

        Assert.Contains(
            "\"doubts\":[{\"kind\":\"hedged\"},{\"kind\":\"outside plausible span\",\"check\":\"coil-secondary-resistance\",\"value\":94000,\"from\":",
            Assert.Single(run.Lines), StringComparison.Ordinal);
        Assert.Contains("\"doubt\":\"said with a doubt; that is an unlikely value for Coil secondary, where ", run.Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bracket_place_condition_and_action_have_the_documented_form()
    {
        var run = await CommandRun.WithAsync(
            new Web.ScriptedSpeech(), "Air gap: 0.25 goes, 0.35 does not.\nLead three is burnt, replaced it.\n", Json);

        Assert.Contains("\"value\":null,\"unit\":\"mm\",\"bracket\":{\"goes\":0.25,\"stops\":0.35}", run.Lines[0], StringComparison.Ordinal);
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
        var run = await CommandRun.OfAsync("understand", "--sheet", "ignition-breakerless", "Coil secondary is 9.4 kilohms.");

        Assert.Contains("coil-secondary-resistance: 9.4\u00a0kΩ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Text_that_begins_with_an_at_sign_is_no_file_to_read()
    {
        var run = await CommandRun.OfAsync([.. Json, "@/etc/hostname"]);

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Single(run.Lines);
    }

    [Theory]
    [InlineData("ignition-breakerless")]
    [InlineData("ignition-breakerless-6")] // the id it had before it was for several numbers of cylinders
    public async Task Sheet_goes_by_its_id_and_by_the_one_it_had_before(string id)
    {
        var run = await CommandRun.OfAsync("understand", "--sheet", id, "Lead six is burnt.");

        Assert.Contains("lead-condition", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cylinders_are_those_of_the_engine()
    {
        var six = await CommandRun.OfAsync([.. Json, "Lead five is burnt."]);
        var four = await CommandRun.OfAsync([.. Json, "--cylinders", "4", "Lead five is burnt."]);
        var eight = await CommandRun.OfAsync([.. Json, "--cylinders", "8", "Lead eight is burnt."]);

        Assert.Contains("\"cylinder\":5", six.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("\"cylinder\":5", four.Out, StringComparison.Ordinal);
        Assert.Contains("\"cylinder\":8", eight.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Number_of_cylinders_no_sheet_is_for_is_refused()
    {
        var run = await CommandRun.OfAsync([.. Json, "--cylinders", "7", "Lead five is burnt."]);

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("is not for 7 cylinders. Use --cylinders 3, 4, 5, 6, 8 or 12.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_sheet_it_says_which_there_are()
    {
        var run = await CommandRun.OfAsync("understand", "--sheet", "brakes", "text");

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("ignition-breakerless", run.Error, StringComparison.Ordinal);
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
