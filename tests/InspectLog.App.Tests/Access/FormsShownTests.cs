using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using InspectLog.App.Access;
using InspectLog.App.Devices;
using InspectLog.App.Tests.Web;
using InspectLog.Journal.Entries;
using Microsoft.AspNetCore.Routing;

namespace InspectLog.App.Tests.Access;

/// <summary>Goes through all pages as somebody who may only look: no form is shown that they may not send.</summary>
public sealed class FormsShownTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(AccessRole.Technician)]
    [InlineData(AccessRole.Instructor)]
    [InlineData(AccessRole.Student)]
    [InlineData(AccessRole.Viewer)]
    public async Task No_page_shows_a_form_that_its_role_may_not_send(AccessRole role)
    {
        await using var app = await LanApp.StartAsync();
        var parts = (await app.AddInspectionAsync("Bramble")).Split('/');
        var (vehicle, inspection) = (parts[2], parts[4]);
        Fill(app.Garage, vehicle, inspection);
        var phone = role == AccessRole.Viewer
            ? await ReportLinkTests.OpenLinkAsync(app, $"/vehicles/{vehicle}/inspections/{inspection}/report")
            : await app.PairAsync(role: RoleWords.Of(role), vehicle: vehicle);
        var (pages, forms) = (0, 0);
        foreach (var (address, page) in await PagesAsync(phone, app.Endpoints, vehicle, inspection))
        {
            pages++;
            foreach (var form in FormsOf(page))
            {
                forms++;
                var taker = app.Endpoints.FirstOrDefault(endpoint => Takes(endpoint, form));
                Assert.True(taker is not null, $"{address}: no endpoint takes {form}");
                var policy = taker.Metadata.GetMetadata<Microsoft.AspNetCore.Authorization.IAuthorizeData>()?.Policy;
                Assert.True(policy is null || Policies.Roles[policy].Contains(role), $"{address} shows the form {form}, which a {role} may not send");
            }
        }

        Assert.True(pages > (role == AccessRole.Viewer ? 2 : 8), $"{pages} pages");
        Assert.True(forms > 0, "not even the switch of the colours was seen");
    }

    [Fact]
    public async Task Folder_that_is_looked_at_only_has_no_form_on_any_page()
    {
        var folder = Directory.CreateTempSubdirectory("inspectlog-look-");
        await using (var app = await TestApp.StartAsync(folder: folder.FullName))
        {
            await app.StartInspectionAsync();
            Fill(app.Garage, "marigold", "2");
        }

        await using (var app = await TestApp.StartAsync(folder: folder.FullName, lookOnly: true))
        {
            var pages = await PagesAsync(app.Client, app.Endpoints, "marigold", "2");
            Assert.True(pages.Count > 15, $"{pages.Count} pages");
            Assert.All(pages, page => Assert.True(FormsOf(page.Page).Count == 0, $"{page.Address} shows {string.Join(", ", FormsOf(page.Page))}"));
            Assert.Contains(pages, page => page.Page.Body!.TextContent.Contains("is only looked at, so nothing can be changed here", StringComparison.Ordinal));
        }

        folder.Delete(recursive: true);
    }

    private static void Fill(Journal.Garage garage, string vehicle, string inspection)
    {
        var number = long.Parse(inspection, System.Globalization.CultureInfo.InvariantCulture);
        garage.Append(vehicle, "Tess Okafor", _ => [new NoteWritten(number, null, "Smells of petrol"), new WearPartAdded("Spark plugs", new(24, null, null), new(new(2026, 3, 1), null, null))]);
        garage.AppendToWorkshop("Tess Okafor", new InstrumentAdded(new("meter-1", "Bench meter", Measuring.QuantityKind.Resistance, new(0.8, 3), 0.1)));
        garage.AppendToWorkshop("Tess Okafor", new OwnWordAdded("ignition-breakerless", "cooked", "lead-condition", "burnt"));
    }

    private static async Task<List<(string Address, IHtmlDocument Page)>> PagesAsync(HttpClient client, IEnumerable<RouteEndpoint> endpoints, string vehicle, string inspection)
    {
        var pages = new List<(string, IHtmlDocument)>();
        foreach (var route in Route.All(endpoints, vehicle, inspection).Where(route => route.Method == "GET"))
        {
            using var answer = await route.AskAsync(client);
            if (answer.IsSuccessStatusCode && answer.Content.Headers.ContentType?.MediaType == "text/html")
            {
                pages.Add((route.Address, await new HtmlParser().ParseDocumentAsync(await answer.Content.ReadAsStringAsync(Stop), Stop)));
            }
        }

        return pages;
    }

    /// <summary>Where the forms of a page go, and what scripts or buttons send instead of them.</summary>
    private static List<string> FormsOf(IHtmlDocument page) =>
    [
        .. page.QuerySelectorAll("form[method=post]").Select(form => form.GetAttribute("action")!),
        .. page.QuerySelectorAll("[hx-post]").Select(one => one.GetAttribute("hx-post")!),
        .. page.QuerySelectorAll("[formaction]").Select(one => one.GetAttribute("formaction")!),
    ];

    private static bool Takes(RouteEndpoint endpoint, string action)
    {
        var (pattern, path) = (endpoint.RoutePattern.RawText!.Trim('/').Split('/'), action.Split('?', '#')[0].Trim('/').Split('/'));
        return endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains("POST") == true
            && pattern.Length == path.Length
            && pattern.Zip(path).All(pair => pair.First.StartsWith('{') || pair.First == pair.Second);
    }
}
