using InspectLog.Dictation.Hearing;
using InspectLog.Journal;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Commands;

/// <summary>The workshop's own words at the verbs that read findings.</summary>
public sealed class OwnWordsChoiceTests : IDisposable
{
    private const string Sheet = "ignition-breakerless";

    /// <summary>How a finding ends that nothing is wrong with: without the word, plugs are a guess at best.</summary>
    private const string NoDoubt = "\"doubt\":null}]";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");
    private readonly Garage _garage;

    public OwnWordsChoiceTests()
    {
        _garage = Garage.Open(Data, TimeProvider.System);
        _garage.AppendToWorkshop(
            "Tess Okafor",
            new OwnWordAdded(Sheet, "sparkler", "plug-condition", null),
            new OwnWordAdded(Sheet, "cooked", "lead-condition", "burnt"),
            new OwnWordAdded("brakes", "squealer", "pads", null));
    }

    private string Data => Path.Combine(_folder.FullName, "garage");

    private string Journal => Path.Combine(Data, "workshop.jsonl");

    public void Dispose()
    {
        _garage.Dispose();
        _folder.Delete(recursive: true);
    }

    [Theory]
    [InlineData("Sparkler three is wet.", "\"check\":\"plug-condition\",\"place\":{\"cylinder\":3}")]
    [InlineData("Lead two is cooked.", "\"condition\":\"burnt\"")]
    public async Task Understand_takes_the_words_of_a_garage_in_use(string text, string finding)
    {
        var with = await CommandRun.OfAsync("understand", "--sheet", Sheet, "--json", "--data", Data, text);
        var without = await CommandRun.OfAsync("understand", "--sheet", Sheet, "--json", text);

        Assert.Equal((0, ""), (with.ExitCode, with.Error));
        Assert.Contains(finding, with.Out, StringComparison.Ordinal);
        Assert.Contains(NoDoubt, with.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(NoDoubt, without.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Word_that_was_removed_is_not_known()
    {
        _garage.AppendToWorkshop("Tess Okafor", new OwnWordRemoved(1));

        var run = await CommandRun.OfAsync("understand", "--sheet", Sheet, "--json", "--data", Data, "Sparkler three is wet.");

        Assert.DoesNotContain(NoDoubt, run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Transcribe_takes_them_too()
    {
        var run = await CommandRun.WithAsync(
            new Says("Sparkler three is wet."), "", "transcribe", Recording(), "--sheet", Sheet, "--json", "--data", Data);

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains("\"check\":\"plug-condition\",\"place\":{\"cylinder\":3}", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Transcribe_without_a_sheet_says_that_words_need_one()
    {
        var run = await CommandRun.WithAsync(new Says("Sparkler three is wet."), "", "transcribe", Recording(), "--data", Data);

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("--sheet ID", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Garage_without_words_of_its_own_is_read_as_ever()
    {
        var empty = Path.Combine(_folder.FullName, "empty");
        Garage.Open(empty, TimeProvider.System).Dispose();

        var run = await CommandRun.OfAsync("understand", "--sheet", Sheet, "--data", empty, "Lead two is burnt.");

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains("lead-condition", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Folder_that_is_not_there_is_refused_and_not_made()
    {
        var missing = Path.Combine(_folder.FullName, "nowhere");

        var run = await CommandRun.OfAsync("understand", "--sheet", Sheet, "--data", missing, "Lead two is burnt.");

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains($"There is no folder {missing}.", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(missing));
    }

    [Fact]
    public async Task Folder_of_something_else_is_refused()
    {
        var run = await CommandRun.OfAsync("understand", "--sheet", Sheet, "--data", _folder.FullName, "Lead two is burnt.");

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("is no data folder", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Damaged_words_are_not_relied_on()
    {
        await ChangeJournalAsync(text => text.Replace("\"sparkler\"", "\"sprinkler\"", StringComparison.Ordinal));

        var run = await CommandRun.OfAsync("understand", "--sheet", Sheet, "--data", Data, "Sparkler three is wet.");

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("line 1 of the workshop's journal is damaged", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Word_that_was_never_written_whole_is_passed_over()
    {
        await ChangeJournalAsync(text => text + "{\"seq\":4,\"kind\":\"own-wo");

        var run = await CommandRun.OfAsync("understand", "--sheet", Sheet, "--json", "--data", Data, "Sparkler three is wet.");

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains(NoDoubt, run.Out, StringComparison.Ordinal);
    }

    private async Task ChangeJournalAsync(Func<string, string> change)
    {
        _garage.Dispose();
        var text = await File.ReadAllTextAsync(Journal, TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(Journal, change(text), TestContext.Current.CancellationToken);
    }

    private string Recording()
    {
        var path = Path.Combine(_folder.FullName, "note.wav");
        File.WriteAllBytes(path, WavFile.Write(new PcmAudio(new float[PcmAudio.SampleRate])));
        return path;
    }

    private sealed class Says(string text) : ISpeechToText
    {
        public SpeechReadiness Readiness => new(true, "one", null, null);

        public Task<Transcript> TranscribeAsync(
            PcmAudio audio, string? examples, IProgress<double>? progress, CancellationToken cancellationToken) =>
            Task.FromResult(new Transcript(text, [], SpeechFound: true, audio.Duration));
    }
}
