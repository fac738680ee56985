using System.Net;
using InspectLog.App.Access;
using InspectLog.App.Devices;
using InspectLog.Journal.Entries;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Routing;

namespace InspectLog.App.Tests.Access;

/// <summary>Walks the whole endpoint table: who gets in where.</summary>
public sealed class WhoMayTests
{
    [Fact]
    public async Task Every_endpoint_says_who_may_use_it_and_only_pairing_is_open_to_all()
    {
        await using var app = await LanApp.StartAsync();

        Assert.NotEmpty(app.Endpoints);
        Assert.All(app.Endpoints, endpoint => Assert.True(
            endpoint.Metadata.GetMetadata<IAllowAnonymous>() is not null
            || endpoint.Metadata.OfType<IAuthorizeData>().ToList() is [{ Policy: { } policy }] && Policies.Roles.ContainsKey(policy),
            endpoint.RoutePattern.RawText));
        Assert.Equal(
            ["pair", "take-pairing"],
            app.Endpoints.Where(endpoint => endpoint.Metadata.GetMetadata<IAllowAnonymous>() is not null)
                .Select(endpoint => endpoint.Metadata.GetMetadata<IEndpointNameMetadata>()!.EndpointName));
    }

    [Fact]
    public async Task Stranger_gets_nothing_from_any_endpoint()
    {
        await using var app = await LanApp.StartAsync();
        var (vehicle, inspection) = await GarageAsync(app, "Bramble");
        var number = 0;
        foreach (var route in Route.All(app.Endpoints, vehicle, inspection).Where(route => route.Policy is not null))
        {
            // Each from another address: one alone is soon told to wait.
            var stranger = app.NewPhone($"127.0.1.{++number % 250 + 1}");

            var answer = await route.AskAsync(stranger);

            Assert.True(answer.StatusCode == HttpStatusCode.Unauthorized, $"{route}: {answer.StatusCode}");
            Assert.DoesNotContain("Bramble", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
            Assert.False(answer.Headers.Contains("Set-Cookie"));
        }
    }

    [Theory]
    [InlineData(AccessRole.Owner)]
    [InlineData(AccessRole.Technician)]
    [InlineData(AccessRole.Instructor)]
    [InlineData(AccessRole.Student)]
    [InlineData(AccessRole.Viewer)]
    public async Task Role_gets_in_where_it_may_and_nowhere_else(AccessRole role)
    {
        await using var app = await LanApp.StartAsync();
        var (vehicle, inspection) = await GarageAsync(app, "Bramble");
        var phone = await PhoneOfAsync(app, role, vehicle, inspection);
        foreach (var route in Route.All(app.Endpoints, vehicle, inspection).Where(route => route.Policy is not null))
        {
            using var answer = await route.AskAsync(phone);

            // A photo that does not exist is nobody's: who sees one vehicle alone is refused before it is looked for.
            var isLetIn = route.IsFor(role) && !(route.Address.Contains(new string('0', 64), StringComparison.Ordinal) && role is AccessRole.Student or AccessRole.Viewer);
            Assert.True(isLetIn == answer.StatusCode is not HttpStatusCode.Forbidden and not HttpStatusCode.Unauthorized, $"{route}: {answer.StatusCode}");
        }
    }

    [Theory]
    [InlineData(AccessRole.Student)]
    [InlineData(AccessRole.Viewer)]
    public async Task Who_is_let_in_to_one_vehicle_sees_no_other(AccessRole role)
    {
        await using var app = await LanApp.StartAsync();
        var (vehicle, inspection) = await GarageAsync(app, "Bramble");
        var (other, itsInspection) = await GarageAsync(app, "Teasel");
        var phone = await PhoneOfAsync(app, role, vehicle, inspection);
        foreach (var route in Route.All(app.Endpoints, other, itsInspection).Where(route => route.Address.Contains(other, StringComparison.Ordinal)))
        {
            using var answer = await route.AskAsync(phone);

            Assert.True(answer.StatusCode == HttpStatusCode.Forbidden, $"{route}: {answer.StatusCode}");
        }
    }

    [Fact]
    public async Task Viewer_reads_one_inspection_of_the_vehicle_alone()
    {
        await using var app = await LanApp.StartAsync();
        var (vehicle, inspection) = await GarageAsync(app, "Bramble");
        var viewer = await PhoneOfAsync(app, AccessRole.Viewer, vehicle, inspection);

        Assert.Equal(HttpStatusCode.OK, await LanApp.StatusAsync(viewer, $"/vehicles/{vehicle}/inspections/{inspection}/report"));
        Assert.Equal(HttpStatusCode.Forbidden, await LanApp.StatusAsync(viewer, $"/vehicles/{vehicle}/inspections/{inspection}9/report"));
    }

    private static async Task<(string Vehicle, string Inspection)> GarageAsync(LanApp app, string name)
    {
        var parts = (await app.AddInspectionAsync(name)).Split('/');
        return (parts[2], parts[4]);
    }

    private static async Task<HttpClient> PhoneOfAsync(LanApp app, AccessRole role, string vehicle, string inspection) => role == AccessRole.Viewer
        ? await ReportLinkTests.OpenLinkAsync(app, $"/vehicles/{vehicle}/inspections/{inspection}/report")
        : await app.PairAsync(role: RoleWords.Of(role), vehicle: vehicle);
}
