using System.Net;
using InspectLog.App.Tests.Web;

namespace InspectLog.App.Tests.Access;

/// <summary>What comes over the network and is not let in.</summary>
public sealed class RefusedTests
{
    [Fact]
    public async Task Foreign_host_is_refused_by_phones_door_too()
    {
        await using var app = await LanApp.StartAsync();
        var phone = app.NewPhone(checksName: false);
        using var request = new HttpRequestMessage(HttpMethod.Get, "/pair") { Headers = { Host = "garage.example" } };

        var answer = await phone.SendAsync(request, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("https://elsewhere.example")]
    [InlineData("http://127.0.0.2")]
    [InlineData("null")]
    public async Task Form_of_another_site_is_refused_though_the_phone_is_paired(string origin)
    {
        await using var app = await LanApp.StartAsync();
        var bench = await app.AddInspectionAsync("Bramble");
        var phone = await app.PairAsync();
        phone.DefaultRequestHeaders.Remove("Origin");
        phone.DefaultRequestHeaders.Add("Origin", origin);

        var answer = await LanApp.SendAsync(phone, $"{bench}/notes", ("text", "Forged."));

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Theory]
    [InlineData("")]
    [InlineData("0000000000000000000000000000000000000000000")]
    [InlineData("not a token")]
    public async Task Made_up_token_is_a_strangers(string token)
    {
        await using var app = await LanApp.StartAsync();
        await app.PairAsync();
        var stranger = app.NewPhone();
        stranger.DefaultRequestHeaders.Add("Cookie", $"__Host-inspectlog={token}");

        Assert.Equal(HttpStatusCode.Unauthorized, await LanApp.StatusAsync(stranger, "/"));
    }

    [Fact]
    public async Task Strangers_page_says_what_to_do_and_scripts_get_words()
    {
        await using var app = await LanApp.StartAsync();
        var stranger = app.NewPhone();

        var page = await TestApp.ParseAsync(await stranger.GetAsync("/", TestContext.Current.CancellationToken));
        stranger.DefaultRequestHeaders.Add("Accept", "application/json");
        var words = await stranger.GetStringAsync("/pair", TestContext.Current.CancellationToken);
        var refused = await (await stranger.GetAsync("/find", TestContext.Current.CancellationToken)).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

        Assert.Contains("not paired", page.QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("/pair", page.QuerySelector("header a")!.GetAttribute("href"));
        Assert.NotEmpty(words);
        Assert.StartsWith("{\"message\":", refused, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stranger_who_asks_too_much_is_told_to_wait_and_paired_phones_are_not()
    {
        await using var app = await LanApp.StartAsync();
        var phone = await app.PairAsync();
        var stranger = app.NewPhone("127.0.1.9");
        var answers = new List<HttpStatusCode>();
        for (var asked = 0; asked < 61; asked++)
        {
            answers.Add(await LanApp.StatusAsync(stranger, "/pair"));
        }

        Assert.Equal(HttpStatusCode.OK, answers[59]);
        Assert.Equal(HttpStatusCode.TooManyRequests, answers[60]);
        Assert.Equal(HttpStatusCode.OK, await LanApp.StatusAsync(phone, "/"));
    }

    [Fact]
    public async Task Phone_that_asks_without_end_is_told_to_wait()
    {
        await using var app = await LanApp.StartAsync();
        var phone = await app.PairAsync();
        var asked = 0;
        while (await LanApp.StatusAsync(phone, "/icon.svg") == HttpStatusCode.OK && await LanApp.StatusAsync(phone, "/about") == HttpStatusCode.OK && asked < 3000)
        {
            asked++;
        }

        Assert.InRange(asked, 500, 2999);
    }

    [Fact]
    public async Task Plain_http_hands_out_the_certificate_and_nothing_else()
    {
        await using var app = await LanApp.StartAsync();
        await app.AddInspectionAsync("Bramble");
        using var client = TestApp.NewClient(app.Addresses.Certificate[0]);

        var page = await LanApp.PageAsync(client, "/");
        var file = await client.GetAsync("/authority.crt", TestContext.Current.CancellationToken);
        var posted = await LanApp.SendAsync(client, "/", ("a", "b"));

        Assert.Contains(app.Lan.ToString(), page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal("application/x-x509-ca-cert", file.Content.Headers.ContentType!.MediaType);
        Assert.Equal(HttpStatusCode.MethodNotAllowed, posted.StatusCode);
        Assert.Equal(HttpStatusCode.OK, await LanApp.StatusAsync(client, "/css/base.css"));
        Assert.All(["/devices", "/pair", "/vehicles/bramble", "/js/main.js", "/media/x"], path =>
            Assert.Equal("/", client.GetAsync(path, TestContext.Current.CancellationToken).Result.Headers.Location!.ToString()));
    }

    [Fact]
    public async Task Certificate_shown_is_the_one_to_compare()
    {
        await using var app = await LanApp.StartAsync();
        using var client = TestApp.NewClient(app.Addresses.Certificate[0]);

        var told = (await LanApp.PageAsync(client, "/")).QuerySelector(".fingerprint")!.TextContent;
        var bytes = await client.GetByteArrayAsync("/authority.crt", TestContext.Current.CancellationToken);

        Assert.Equal(Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(bytes)), told.Replace(":", "", StringComparison.Ordinal));
        Assert.Equal(told, (await LanApp.PageAsync(app.Workshop, "/devices")).QuerySelector(".fingerprint")!.TextContent);
    }

    [Fact]
    public async Task Program_for_this_computer_alone_says_how_to_let_phones_in()
    {
        await using var app = await TestApp.StartAsync();

        var page = await app.PageAsync("/devices");

        Assert.Contains("serve --lan", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Null(page.QuerySelector("main form"));
    }
}
