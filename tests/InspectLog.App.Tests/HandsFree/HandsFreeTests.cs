using System.Net;
using System.Net.Http.Json;
using InspectLog.App.Tests.Web;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.HandsFree;

/// <summary>Utterances sent to the real web app, with the words given by the test.</summary>
public sealed class HandsFreeTests
{
    [Fact]
    public async Task Spoken_confirmation_records_in_the_name_of_the_technician_with_its_recording_as_evidence()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Coil secondary 9.4 k.", "Confirm that."));
        var bench = await app.StartInspectionAsync();

        await SayAsync(app, bench, 1);
        var command = await SayAsync(app, bench, 2);

        var reading = Assert.Single(Inspection(app).Readings);
        Assert.Contains(reading.Sequence, command.Done!.Entries);
        Assert.Equal("Tess Okafor", app.Garage.Entries("marigold").Single(entry => entry.Body is CommandDone).Actor);
        Assert.Empty(command.Proposals!);
    }

    [Fact]
    public async Task Answer_shows_on_the_bench_and_in_the_stream()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Coil secondary 9.4 k.", "Next check."));
        var bench = await app.StartInspectionAsync();
        await SayAsync(app, bench, 1);
        var command = await SayAsync(app, bench, 2, "spark");

        var page = await app.PageAsync(bench);

        var answer = page.QuerySelector("#hands-free .answer")!.TextContent;
        Assert.StartsWith("Next: ", answer, StringComparison.Ordinal);
        Assert.Contains(answer, page.QuerySelector($"#item-{command.Sequence}")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("a command: next check", page.QuerySelector($"#item-{command.Sequence}")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("2 kept", page.QuerySelector("#hands-free .counts")!.TextContent, StringComparison.Ordinal);

        // The page goes where the sheet's own link goes.
        var go = page.QuerySelector($"#hands-free-turns [data-turn='{command.Sequence}']")!.GetAttribute("data-go");
        Assert.Contains(page.QuerySelectorAll("#sheet a"), link => link.GetAttribute("href") == go);
    }

    [Fact]
    public async Task Command_words_in_a_note_of_the_Say_button_stay_a_note()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Coil secondary 9.4 k.", "Confirm that."));
        var bench = await app.StartInspectionAsync();
        await SayAsync(app, bench, 1);

        await SendAsync(app, $"{bench}/recordings", 2);
        await Eventually.GetAsync(() => Inspection(app).VoiceNotes.Count(note => note.Proposals is not null) == 2 ? "read" : null);

        Assert.Empty(Inspection(app).Readings);
        Assert.Null(Inspection(app).VoiceNotes.Last().Command);
    }

    [Fact]
    public async Task Utterance_that_comes_again_because_its_answer_got_lost_is_the_same_note()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Plug two is wet."));
        var bench = await app.StartInspectionAsync();

        var first = await SendAsync(app, $"{bench}/recordings?handsFree=true", 1);
        var second = await SendAsync(app, $"{bench}/recordings?handsFree=true", 1);

        Assert.Equal(first, second);
        Assert.Single(Inspection(app).VoiceNotes);
    }

    [Fact]
    public async Task Misheard_command_does_nothing_and_asks()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Coil secondary 9.4 k.", "Confirmed that."));
        var bench = await app.StartInspectionAsync();
        await SayAsync(app, bench, 1);

        await SayAsync(app, bench, 2);

        Assert.Empty(Inspection(app).Readings);
        var page = await app.PageAsync(bench);
        Assert.StartsWith("Did you mean \u201Cconfirm that\u201D?", page.QuerySelector("#hands-free .answer")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Command_is_not_obeyed_in_a_closed_inspection()
    {
        var gate = new TaskCompletionSource();
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Confirm that.") { Gate = gate });
        var bench = await app.StartInspectionAsync();
        await SendAsync(app, $"{bench}/recordings?handsFree=true", 1);
        app.Garage.Append("marigold", "Tess Okafor", _ => [new InspectionClosed(Inspection(app).Number)]);

        gate.SetResult();
        await Eventually.GetAsync(() => Inspection(app).VoiceNotes.Single().Command);

        Assert.Null(Inspection(app).VoiceNotes.Single().Done);
    }

    [Fact]
    public async Task Command_heard_before_a_restart_is_obeyed_once_the_note_before_it_is_read()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech { Problem = "The model is missing." });
        var bench = await app.StartInspectionAsync();
        await SendAsync(app, $"{bench}/recordings?handsFree=true", 1);
        await SendAsync(app, $"{bench}/recordings?handsFree=true", 2);
        await app.StopAsync();

        // The newest is read first, so the command before what it is about.
        await using var again = await TestApp.StartAsync(new ScriptedSpeech("Confirm that.", "Coil secondary 9.4 k."), app.Folder);
        await Eventually.GetAsync(() => Inspection(again).VoiceNotes.Last().Done);

        Assert.Single(Inspection(again).Readings);
    }

    [Fact]
    public async Task Journal_page_tells_of_commands_in_words()
    {
        await using var app = await TestApp.StartAsync(new ScriptedSpeech("Coil secondary 9.4 k.", "Confirm that."));
        var bench = await app.StartInspectionAsync();
        await SayAsync(app, bench, 1);
        var command = await SayAsync(app, bench, 2);

        var text = (await app.PageAsync("/vehicles/marigold/journal")).Body!.TextContent;

        Assert.Contains($"Voice note {command.Sequence} was heard as a command: confirm that", text, StringComparison.Ordinal);
        Assert.Contains($"Command of voice note {command.Sequence}: Confirmed: Coil secondary", text, StringComparison.Ordinal);
    }

    /// <summary>Sends an utterance and waits until it is dealt with.</summary>
    private static async Task<VoiceNote> SayAsync(TestApp app, string bench, int sound, string? check = null)
    {
        var recording = await SendAsync(app, $"{bench}/recordings?handsFree=true&check={check}", sound);
        return await Eventually.GetAsync(() => Inspection(app).FindVoiceNote(recording) is { Proposals: not null } note
            && (note.Command is null or { Doubt: not null } || note.Done is not null)
            ? note
            : null);
    }

    private static async Task<long> SendAsync(TestApp app, string address, int sound)
    {
        using var content = new ByteArrayContent(Sounds.Tone(0.3f + (0.01f * sound)));
        var answer = await app.Client.PostAsync(address, content, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        return (await answer.Content.ReadFromJsonAsync<Kept>(TestContext.Current.CancellationToken))!.Recording;
    }

    private static InspectionState Inspection(TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0];

    private sealed record Kept(long Recording);
}
