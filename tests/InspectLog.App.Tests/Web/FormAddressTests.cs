using System.Net;
using Microsoft.AspNetCore.Routing;

namespace InspectLog.App.Tests.Web;

/// <summary>Addresses that only take forms, opened as pages.</summary>
public sealed class FormAddressTests
{
    [Fact]
    public async Task Address_of_a_refused_start_opened_again_leads_to_the_vehicle()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await app.PostAsync($"{vehicle}/inspections", ("technician", "Tess"), ("odometer", "far"))).StatusCode);

        Assert.Equal(vehicle, await LedToAsync(app, $"{vehicle}/inspections"));
    }

    [Fact]
    public async Task Every_address_that_only_takes_forms_leads_to_a_page()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var pages = app.Endpoints.Where(one => Takes(one, "GET")).Select(one => one.RoutePattern.RawText).ToHashSet();
        var forms = app.Endpoints.Where(one => Takes(one, "POST") && !pages.Contains(one.RoutePattern.RawText)).ToList();
        Assert.True(forms.Count > 20);

        foreach (var form in forms)
        {
            var address = form.RoutePattern.RawText!.Replace("/vehicles/{vehicle}/inspections/{number:long}", bench, StringComparison.Ordinal)
                .Replace("{vehicle}", "marigold", StringComparison.Ordinal);
            var page = await LedToAsync(app, Parameters().Replace(address, "1"));
            Assert.NotEqual(HttpStatusCode.MethodNotAllowed, (await app.Client.GetAsync(page, TestContext.Current.CancellationToken)).StatusCode);
        }
    }

    [Fact]
    public async Task Script_is_not_led_anywhere()
    {
        await using var app = await TestApp.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, $"{await app.StartInspectionAsync()}/recordings");
        request.Headers.Add("Accept", "application/json");

        Assert.Equal(HttpStatusCode.MethodNotAllowed, (await app.Client.SendAsync(request, TestContext.Current.CancellationToken)).StatusCode);
    }

    private static bool Takes(RouteEndpoint endpoint, string method) =>
        endpoint.Metadata.GetMetadata<IHttpMethodMetadata>()?.HttpMethods.Contains(method) == true;

    private static async Task<string> LedToAsync(TestApp app, string address)
    {
        var answer = await app.Client.GetAsync(address, TestContext.Current.CancellationToken);
        Assert.True(answer.StatusCode == HttpStatusCode.Redirect, $"{address}: {answer.StatusCode}");
        return answer.Headers.Location!.ToString();
    }

    private static System.Text.RegularExpressions.Regex Parameters() => new(@"\{[^}]+\}");
}
