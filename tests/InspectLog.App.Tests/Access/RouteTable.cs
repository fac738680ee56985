using InspectLog.App.Access;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Routing;

namespace InspectLog.App.Tests.Access;

/// <summary>One endpoint as it can be asked for.</summary>
/// <param name="Method">GET or POST.</param>
/// <param name="Address">An address it answers.</param>
/// <param name="Policy">Who may; null for everybody.</param>
internal sealed record Route(string Method, string Address, string? Policy)
{
    /// <summary>All endpoints, with addresses of one vehicle and one of its inspections.</summary>
    public static IReadOnlyList<Route> All(IEnumerable<RouteEndpoint> endpoints, string vehicle, string inspection) =>
    [
        .. endpoints.Select(endpoint => new Route(
            endpoint.Metadata.GetMetadata<HttpMethodMetadata>()!.HttpMethods.Single(),
            Fill(endpoint.RoutePattern.RawText!, vehicle, inspection),
            endpoint.Metadata.GetMetadata<IAllowAnonymous>() is null ? endpoint.Metadata.GetMetadata<IAuthorizeData>()!.Policy : null)),
    ];

    public bool IsFor(Journal.Entries.AccessRole role) => Policy is null || Policies.Roles[Policy].Contains(role);

    public async Task<HttpResponseMessage> AskAsync(HttpClient client)
    {
        using var request = new HttpRequestMessage(new HttpMethod(Method), Address);
        if (Method != "GET")
        {
            request.Content = new FormUrlEncodedContent([]);
        }

        // Events never end: what counts is how the answer begins.
        return await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);
    }

    private static string Fill(string pattern, string vehicle, string inspection)
    {
        var parts = pattern.Split('/').Select(part => part switch
        {
            "{vehicle}" => vehicle,
            "{number:long}" => inspection,
            "{sha256}" => new string('0', 64),
            ['{', ..] when part.Contains(":long", StringComparison.Ordinal) || part.Contains(":int", StringComparison.Ordinal) => "999",
            ['{', ..] => "nothing",
            _ => part,
        });
        return string.Join('/', parts);
    }
}
