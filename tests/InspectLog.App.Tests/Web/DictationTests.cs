using System.Net;
using System.Net.Http.Headers;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>From a recording to a confirmed record, with the words given by the test.</summary>
public sealed class DictationTests
{
    [Fact]
    public async Task Heard_reading_counts_only_once_it_is_confirmed()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Coil secondary 9.4 k."));
        var bench = await app.StartInspectionAsync();

        await SendAsync(app, bench, Sounds.Tone());
        var note = await ProposalsAsync(app);

        Assert.Empty(Inspection(app).Readings);
        Assert.Equal(9400, Assert.Single(note.Proposals!).Finding.Value);

        await app.PostForRedirectAsync($"{bench}/findings/{note.Sequence}/0/confirm");

        var reading = Assert.Single(Inspection(app).Readings).Body;
        Assert.Equal(Decision.Pass, reading.Conformity!.Decision);
        Assert.Equal(ProposalState.Confirmed, Inspection(app).FindVoiceNote(note.Sequence)!.Proposals![0].State);
    }

    [Fact]
    public async Task Confirming_twice_records_once()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Coil secondary 9.4 k."));
        var bench = await app.StartInspectionAsync();
        await SendAsync(app, bench, Sounds.Tone());
        var note = await ProposalsAsync(app);

        await app.PostForRedirectAsync($"{bench}/findings/{note.Sequence}/0/confirm");
        await app.PostForRedirectAsync($"{bench}/findings/{note.Sequence}/0/confirm");

        Assert.Single(Inspection(app).Readings);
    }

    [Fact]
    public async Task Spoken_repeats_become_one_reading()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Secondary 10.1, 10.2, 10.1."));
        var bench = await app.StartInspectionAsync();
        await SendAsync(app, bench, Sounds.Tone());
        var note = await ProposalsAsync(app);
        Assert.Equal(3, note.Proposals!.Count);

        await app.PostForRedirectAsync($"{bench}/findings/{note.Sequence}/0/confirm");

        var reading = Assert.Single(Inspection(app).Readings).Body;
        Assert.Equal([10100, 10200, 10100], Assert.IsType<DisplayedReading>(reading.Reading).Values);
        Assert.All(
            Inspection(app).FindVoiceNote(note.Sequence)!.Proposals!,
            proposal => Assert.Equal(ProposalState.Confirmed, proposal.State));
    }

    [Fact]
    public async Task Dropped_finding_leaves_no_record()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Plug two is wet."));
        var bench = await app.StartInspectionAsync();
        await SendAsync(app, bench, Sounds.Tone());
        var note = await ProposalsAsync(app);

        await app.PostForRedirectAsync($"{bench}/findings/{note.Sequence}/0/drop");
        await app.PostForRedirectAsync($"{bench}/findings/{note.Sequence}/0/confirm");

        Assert.Empty(Inspection(app).Observations);
        Assert.Equal(ProposalState.Dropped, Inspection(app).FindVoiceNote(note.Sequence)!.Proposals![0].State);
    }

    [Fact]
    public async Task Changed_finding_is_recorded_as_changed_and_keeps_what_was_heard()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Plug two is wet."));
        var bench = await app.StartInspectionAsync();
        await SendAsync(app, bench, Sounds.Tone());
        var note = await ProposalsAsync(app);

        await app.PostForRedirectAsync(
            $"{bench}/findings/{note.Sequence}/0/change",
            ("check", "plug-condition"), ("cylinder", "3"), ("condition", "sooty"));

        var seen = Assert.Single(Inspection(app).Observations).Body;
        Assert.Equal((3, "sooty"), (seen.Cylinder, seen.Condition));
        Assert.Equal(2, Inspection(app).FindVoiceNote(note.Sequence)!.Proposals![0].Finding.Cylinder);
    }

    [Fact]
    public async Task Change_that_makes_no_sense_is_refused()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Plug two is wet."));
        var bench = await app.StartInspectionAsync();
        await SendAsync(app, bench, Sounds.Tone());
        var note = await ProposalsAsync(app);

        var answer = await app.PostAsync(
            $"{bench}/findings/{note.Sequence}/0/change",
            ("check", "plug-condition"), ("cylinder", "9"), ("condition", "haunted"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(Inspection(app).Observations);
    }

    [Fact]
    public async Task Recording_without_speech_says_so_and_proposes_nothing()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech(""));
        var bench = await app.StartInspectionAsync();

        await SendAsync(app, bench, Sounds.Tone());
        var note = await ProposalsAsync(app);

        Assert.False(note.Transcript!.SpeechFound);
        Assert.Empty(note.Proposals!);
    }

    [Fact]
    public async Task Recording_kept_while_speech_is_unavailable_is_transcribed_after_a_restart()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech { Problem = "The model is missing." });
        var bench = await app.StartInspectionAsync();
        await SendAsync(app, bench, Sounds.Tone());
        Assert.True(Inspection(app).VoiceNotes.Single().IsWaiting);
        await app.StopAsync();

        await using var again = await TestApp.StartAsync(new ScriptedSpeech("Coil secondary 9.4 k."), app.Folder);

        Assert.Single((await ProposalsAsync(again)).Proposals!);
    }

    [Fact]
    public async Task Recording_of_an_unknown_inspection_is_refused()
    {
        await using var app = await TestApp.StartAsync();

        var answer = await app.Client.PostAsync(
            "/vehicles/nobody/inspections/1/recordings", new ByteArrayContent(Sounds.Tone()), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    public static TheoryData<string, byte[]> BadRecordings() => new()
    {
        { "empty", [] },
        { "not a WAV", "this is a note, not a sound"u8.ToArray() },
        { "truncated", Sounds.Tone()[..9000] },
    };

    [Theory]
    [MemberData(nameof(BadRecordings))]
    public async Task Bad_recording_is_refused_with_what_to_do(string what, byte[] bytes)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.Client.PostAsync(
            $"{bench}/recordings", new ByteArrayContent(bytes), TestContext.Current.CancellationToken);

        Assert.True(answer.StatusCode == HttpStatusCode.UnprocessableEntity, what);
        Assert.Contains("message", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Empty(Inspection(app).VoiceNotes);
    }

    [Fact]
    public async Task Recording_of_eleven_minutes_is_refused()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var wav = Sounds.ElevenMinutes();

        var answer = await app.Client.PostAsync(
            $"{bench}/recordings", new ByteArrayContent(wav), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(Inspection(app).VoiceNotes);
    }

    private static async Task SendAsync(TestApp app, string bench, byte[] wav)
    {
        using var content = new ByteArrayContent(wav);
        content.Headers.ContentType = new MediaTypeHeaderValue("audio/wav");
        var answer = await app.Client.PostAsync($"{bench}/recordings", content, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
    }

    private static Task<VoiceNote> ProposalsAsync(TestApp app) => Eventually.GetAsync(
        () => Inspection(app).VoiceNotes.FirstOrDefault(note => note.Proposals is not null));

    private static InspectionState Inspection(TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0];
}
