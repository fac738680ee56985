using System.Net;
using System.Text;
using InspectLog.App.Devices;
using InspectLog.App.Network;
using InspectLog.App.Ui;
using Microsoft.AspNetCore.Http;

namespace InspectLog.App.Tests.Access;

/// <summary>A computer that is open to phones, and at this moment in no network.</summary>
public sealed class NoAddressTests
{
    [Fact]
    public async Task Devices_says_that_no_phone_finds_the_computer_and_what_to_do()
    {
        await using var app = await LanApp.StartAsync();
        var view = new DevicesView(
            new(OpenAddresses.Of(["http://127.0.0.1:5000", "https://[::]:5001", "http://[::]:5002"], names: null), "AA BB"), [], [], [], [], null, []);
        var context = new DefaultHttpContext { RequestServices = app.Services, Request = { Scheme = "http", Host = new("127.0.0.1:5000") }, Response = { Body = new MemoryStream() } };

        await Page.Of<DevicesPage, DevicesView>(view).ExecuteAsync(context);

        var page = Encoding.UTF8.GetString(((MemoryStream)context.Response.Body).ToArray());
        Assert.Equal((int)HttpStatusCode.OK, context.Response.StatusCode);
        Assert.Contains("no address on a local network at present", page, StringComparison.Ordinal);
        Assert.Contains("--lan-address", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Show the code", page, StringComparison.Ordinal);
    }
}
