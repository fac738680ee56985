using System.Net;
using InspectLog.App.Tests.Web;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Access;

/// <summary>How a phone becomes known, and how it stops being.</summary>
public sealed class PairingTests
{
    [Fact]
    public async Task Typed_code_pairs_the_phone_for_the_person_it_was_made_for()
    {
        await using var app = await LanApp.StartAsync();
        var (code, _) = await app.OfferAsync("Ines Vale");
        var phone = app.NewPhone();

        var answer = await LanApp.SendAsync(phone, "/pair", ("code", code));

        Assert.Equal("/", answer.Headers.Location!.ToString());
        Assert.Equal(HttpStatusCode.OK, await LanApp.StatusAsync(phone, "/"));
        Assert.Contains("Ines Vale", (await LanApp.PageAsync(phone, "/")).QuerySelector(".who")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Secret_of_the_picture_pairs_as_the_code_does()
    {
        await using var app = await LanApp.StartAsync();
        var (_, secret) = await app.OfferAsync();
        var phone = app.NewPhone();

        await LanApp.SendAsync(phone, "/pair", ("secret", secret), ("code", ""));

        Assert.Equal(HttpStatusCode.OK, await LanApp.StatusAsync(phone, "/"));
    }

    [Fact]
    public async Task Cookie_is_bound_to_the_host_and_out_of_reach_of_scripts_and_other_sites()
    {
        await using var app = await LanApp.StartAsync();
        var (code, _) = await app.OfferAsync();

        var answer = await LanApp.SendAsync(app.NewPhone(), "/pair", ("code", code));

        // RFC 6265bis, 4.1.3.2: what the prefix demands.
        var cookie = answer.Headers.GetValues("Set-Cookie").Single(one => one.StartsWith("__Host-", StringComparison.Ordinal));
        Assert.All(["; path=/", "; secure", "; samesite=strict", "; httponly", "; max-age="], part => Assert.Contains(part, cookie, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("domain", cookie, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Token_itself_is_written_nowhere()
    {
        await using var app = await LanApp.StartAsync();
        var (code, _) = await app.OfferAsync();
        var answer = await LanApp.SendAsync(app.NewPhone(), "/pair", ("code", code));
        var token = answer.Headers.GetValues("Set-Cookie").Single(one => one.StartsWith("__Host-", StringComparison.Ordinal)).Split('=', ';')[1];

        Assert.Equal(43, token.Length);
        Assert.All(
            Directory.GetFiles(app.Garage.Folder, "*", SearchOption.AllDirectories).Where(file => !file.EndsWith(".lock", StringComparison.Ordinal)),
            file => Assert.DoesNotContain(token, Read(file), StringComparison.Ordinal));
    }

    [Fact]
    public async Task Revoked_phone_is_shut_out_at_once_also_while_it_listens()
    {
        await using var app = await LanApp.StartAsync();
        var bench = await app.AddInspectionAsync("Bramble");
        var phone = await app.PairAsync();
        using var events = await phone.GetAsync($"{bench}/events", HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);
        var stream = await events.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken);
        Assert.True(await stream.ReadAsync(new byte[4096], TestContext.Current.CancellationToken) > 0);

        await LanApp.SendAsync(app.Workshop, $"/devices/{app.Garage.Workshop.Accesses[0].Number}/revoke");
        await LanApp.SendAsync(app.Workshop, $"{bench}/notes", ("text", "The lamp flickers."));

        Assert.Equal(HttpStatusCode.Unauthorized, await LanApp.StatusAsync(phone, "/"));
        Assert.Equal(0, await stream.ReadAsync(new byte[4096], TestContext.Current.CancellationToken));
        Assert.Contains("revoked", (await LanApp.PageAsync(app.Workshop, "/devices")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_phone_records_says_whose_phone_it_was()
    {
        await using var app = await LanApp.StartAsync();
        var bench = await app.AddInspectionAsync("Bramble");
        var phone = await app.PairAsync("Ines Vale");

        await LanApp.SendAsync(phone, $"{bench}/notes", ("text", "The lamp flickers."));

        var entry = app.Garage.Entries("bramble").Single(entry => entry.Body is NoteWritten);
        Assert.Equal(("Ines Vale", "Ines Vale’s phone"), (entry.Actor, entry.Device));
        Assert.Contains("Ines Vale’s phone", (await LanApp.PageAsync(app.Workshop, "/vehicles/bramble/journal")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "technician", "", "Type the person's name.")]
    [InlineData("Ines Vale", "king", "", "Choose what")]
    [InlineData("Ines Vale", "student", "", "vehicle")]
    [InlineData("Ines Vale", "student", "nowhere", "no such vehicle")]
    public async Task Invitation_that_is_not_whole_is_refused(string person, string role, string vehicle, string why)
    {
        await using var app = await LanApp.StartAsync();

        var answer = await LanApp.SendAsync(app.Workshop, "/devices", ("person", person), ("role", role), ("vehicle", vehicle));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(why, (await TestApp.ParseAsync(answer)).QuerySelector(".problems")!.TextContent, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Unknown_device_cannot_be_revoked_and_unknown_code_leads_back()
    {
        await using var app = await LanApp.StartAsync();

        Assert.Equal(HttpStatusCode.NotFound, (await LanApp.SendAsync(app.Workshop, "/devices/7/revoke")).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, await LanApp.StatusAsync(app.Workshop, "/devices/codes/nothing"));
    }

    [Fact]
    public async Task Workshops_own_computer_is_not_paired()
    {
        await using var app = await LanApp.StartAsync();
        var (code, _) = await app.OfferAsync();

        var answer = await LanApp.SendAsync(app.Workshop, "/pair", ("code", code));

        Assert.Equal("/pair", answer.Headers.Location!.ToString());
        Assert.Empty(app.Garage.Workshop.Accesses);
        Assert.Contains("nothing to pair", (await LanApp.PageAsync(app.Workshop, "/pair")).Body!.TextContent, StringComparison.Ordinal);
    }

    private static string Read(string file)
    {
        using var reader = new StreamReader(new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite));
        return reader.ReadToEnd();
    }
}
