using System.Net;
using InspectLog.App.Devices;

namespace InspectLog.App.Tests.Access;

/// <summary>What a code that pairs a phone is good for, how often and how long, and what guessing brings.</summary>
public sealed class PairingCodeTests
{
    [Fact]
    public async Task Code_works_once()
    {
        await using var app = await LanApp.StartAsync();
        var (code, secret) = await app.OfferAsync();
        await LanApp.SendAsync(app.NewPhone(), "/pair", ("code", code));

        foreach (var again in new[] { ("code", code), ("secret", secret) })
        {
            var phone = app.NewPhone();
            var answer = await LanApp.SendAsync(phone, "/pair", again);

            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
            Assert.Contains("works once", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
            Assert.Equal(HttpStatusCode.Unauthorized, await LanApp.StatusAsync(phone, "/"));
        }

        Assert.Single(app.Garage.Workshop.Accesses);
    }

    [Fact]
    public async Task Code_works_for_two_minutes()
    {
        await using var app = await LanApp.StartAsync();
        var (code, secret) = await app.OfferAsync();
        app.Time.Advance(PairingCodes.Life);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await LanApp.SendAsync(app.NewPhone(), "/pair", ("code", code))).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await LanApp.SendAsync(app.NewPhone(), "/pair", ("secret", secret))).StatusCode);
        Assert.Empty(app.Garage.Workshop.Accesses);
    }

    [Fact]
    public async Task Guessing_locks_typed_codes_until_a_new_one_is_made()
    {
        await using var app = await LanApp.StartAsync();
        var (code, _) = await app.OfferAsync();
        var guesser = app.NewPhone();
        for (var guess = 0; guess < PairingCodes.Attempts; guess++)
        {
            await LanApp.SendAsync(guesser, "/pair", ("code", code == "0000 0000" ? "1111 1111" : "0000 0000"));
        }

        var late = await LanApp.SendAsync(app.NewPhone(), "/pair", ("code", code));
        var (fresh, _) = await app.OfferAsync();
        var renewed = await LanApp.SendAsync(app.NewPhone(), "/pair", ("code", fresh));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, late.StatusCode);
        Assert.Contains("Too many wrong codes", await late.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Redirect, renewed.StatusCode);
    }

    [Fact]
    public async Task Picture_still_works_when_typed_codes_are_locked()
    {
        await using var app = await LanApp.StartAsync();
        var (code, secret) = await app.OfferAsync();
        for (var guess = 0; guess < PairingCodes.Attempts; guess++)
        {
            await LanApp.SendAsync(app.NewPhone(), "/pair", ("code", code == "0000 0000" ? "1111 1111" : "0000 0000"));
        }

        Assert.Equal(HttpStatusCode.Redirect, (await LanApp.SendAsync(app.NewPhone(), "/pair", ("secret", secret))).StatusCode);
    }

    [Fact]
    public async Task Many_tries_from_one_address_are_told_to_wait()
    {
        await using var app = await LanApp.StartAsync();
        var guesser = app.NewPhone();
        var answers = new List<HttpStatusCode>();
        for (var guess = 0; guess < 11; guess++)
        {
            answers.Add((await LanApp.SendAsync(guesser, "/pair", ("code", "0000 0000"))).StatusCode);
        }

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answers[9]);
        Assert.Equal(HttpStatusCode.TooManyRequests, answers[10]);
    }
}
