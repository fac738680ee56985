using System.Net;
using Microsoft.AspNetCore.Routing;

namespace InspectLog.App.Tests.Web;

/// <summary>Only the app's own pages can change anything, and only under its own names.</summary>
public sealed class GuardTests
{
    [Theory]
    [InlineData("https://elsewhere.example", null)]
    [InlineData(null, "cross-site")]
    [InlineData(null, "same-site")]
    [InlineData(null, null)]
    public async Task Post_from_elsewhere_is_refused_and_changes_nothing(string? origin, string? fetchSite)
    {
        await using var app = await TestApp.StartAsync();
        using var client = TestApp.NewClient(app.Address, origin);
        if (fetchSite is not null)
        {
            client.DefaultRequestHeaders.Add("Sec-Fetch-Site", fetchSite);
        }

        var answer = await client.PostAsync(
            "/vehicles/new",
            new FormUrlEncodedContent([KeyValuePair.Create("name", "Marigold")]),
            TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Empty(app.Garage.Vehicles());
    }

    [Fact]
    public async Task Post_that_a_browser_calls_same_origin_is_taken()
    {
        await using var app = await TestApp.StartAsync();
        using var client = TestApp.NewClient(app.Address, origin: null);
        client.DefaultRequestHeaders.Add("Sec-Fetch-Site", "same-origin");

        await client.PostAsync(
            "/vehicles/new",
            new FormUrlEncodedContent([KeyValuePair.Create("name", "Marigold")]),
            TestContext.Current.CancellationToken);

        Assert.Single(app.Garage.Vehicles());
    }

    [Fact]
    public async Task Every_endpoint_that_changes_something_refuses_other_sites()
    {
        await using var app = await TestApp.StartAsync();
        using var client = TestApp.NewClient(app.Address, "https://elsewhere.example");
        var patterns = app.Endpoints
            .Where(endpoint => endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains("POST") == true)
            .Select(endpoint => endpoint.RoutePattern.RawText!)
            .ToList();
        Assert.True(patterns.Count > 15, "The list of endpoints looks too short to be the whole app.");

        foreach (var pattern in patterns)
        {
            var address = System.Text.RegularExpressions.Regex.Replace(pattern, @"\{\w+(:\w+)?\}", "1");
            var answer = await client.PostAsync(address, null, TestContext.Current.CancellationToken);
            Assert.True(answer.StatusCode == HttpStatusCode.Forbidden, $"{pattern} answered {answer.StatusCode}");
        }
    }

    [Theory]
    [InlineData("workshop.example")]
    [InlineData("127.0.0.1.evil.example")]
    public async Task Foreign_host_is_refused(string host)
    {
        await using var app = await TestApp.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Host = host;

        var answer = await app.Client.SendAsync(request, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Fact]
    public async Task App_listens_on_the_loopback_interface_only()
    {
        await using var app = await TestApp.StartAsync();

        Assert.Equal("127.0.0.1", app.Address.Host);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/vehicles/new")]
    [InlineData("/no/such/page")]
    public async Task Every_page_forbids_inline_script_and_framing(string address)
    {
        await using var app = await TestApp.StartAsync();

        var answer = await app.Client.GetAsync(address, TestContext.Current.CancellationToken);

        var policy = string.Join(" ", answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
    }
}
