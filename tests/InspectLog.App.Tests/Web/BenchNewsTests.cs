namespace InspectLog.App.Tests.Web;

/// <summary>What an open bench is told: what it missed at once, and nothing that it shows already.</summary>
public sealed class BenchNewsTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Page_that_shows_all_is_told_nothing_until_something_happens()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var at = await PositionAsync(app, bench);
        using var news = new StreamReader(await app.Client.GetStreamAsync($"{bench}/events?at={at}", Stop));
        Assert.Equal(("connected", at), await NextAsync(news));

        await app.PostForRedirectAsync($"{bench}/notes", ("text", "The lamp flickers."));

        Assert.Equal(("changed", await PositionAsync(app, bench)), await NextAsync(news));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Page_that_slept_is_told_at_once_that_it_missed_something(bool isReconnected)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var at = await PositionAsync(app, bench);
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "The lamp flickers."));

        // A browser that connects again says which event it saw last, and the address is still the old one.
        using var request = new HttpRequestMessage(HttpMethod.Get, isReconnected ? $"{bench}/events?at={await PositionAsync(app, bench)}" : $"{bench}/events?at={at}");
        if (isReconnected)
        {
            request.Headers.Add("Last-Event-ID", at);
        }

        using var answer = await app.Client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, Stop);
        using var news = new StreamReader(await answer.Content.ReadAsStreamAsync(Stop));
        Assert.Equal(("changed", await PositionAsync(app, bench)), await NextAsync(news));
    }

    private static async Task<string> PositionAsync(TestApp app, string bench) =>
        (await app.PageAsync(bench)).QuerySelector("#bench")!.GetAttribute("data-at")!;

    /// <summary>Name and id of the next event.</summary>
    private static async Task<(string Name, string Id)> NextAsync(StreamReader news)
    {
        var (name, id) = ("", "");
        while (await news.ReadLineAsync(Stop) is { Length: > 0 } line)
        {
            name = line.StartsWith("event: ", StringComparison.Ordinal) ? line["event: ".Length..] : name;
            id = line.StartsWith("id: ", StringComparison.Ordinal) ? line["id: ".Length..] : id;
        }

        return (name, id);
    }
}
