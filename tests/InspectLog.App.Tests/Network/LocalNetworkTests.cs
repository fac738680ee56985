using System.Net;
using InspectLog.App.Network;

namespace InspectLog.App.Tests.Network;

public sealed class LocalNetworkTests
{
    [Theory]
    [InlineData("Anvil", "anvil")]
    [InlineData("anvil.workshop.example", "anvil")]
    [InlineData("bench-2", "bench-2")]
    [InlineData("localhost", null)]
    [InlineData("my_machine", null)]
    [InlineData("-x", null)]
    [InlineData("", null)]
    public void Machine_name_is_a_host_name_or_none(string machine, string? host) => Assert.Equal(host, LocalNetwork.HostOf(machine));

    // RFC 1918, 3; RFC 3927, 2.1; RFC 5737 for the addresses that are none of these.
    [Theory]
    [InlineData("10.0.0.1", true)]
    [InlineData("172.16.0.1", true)]
    [InlineData("172.31.255.254", true)]
    [InlineData("172.32.0.1", false)]
    [InlineData("192.168.255.255", true)]
    [InlineData("192.169.0.1", false)]
    [InlineData("169.254.1.1", true)]
    [InlineData("203.0.113.1", false)]
    [InlineData("::1", false)]
    public void Private_addresses_are_told_from_others(string address, bool isPrivate) =>
        Assert.Equal(isPrivate, PrivateNetworks.Hold(IPAddress.Parse(address)));

    [Fact]
    public void Addresses_have_the_ports_of_their_listeners()
    {
        var names = new ReachableNames([IPAddress.Parse("192.168.1.5"), IPAddress.Parse("10.0.0.7")], "anvil");

        var open = OpenAddresses.Of(["http://127.0.0.1:5757", "https://0.0.0.0:5758", "http://0.0.0.0:5759"], names);

        Assert.Equal("http://127.0.0.1:5757/", open.Workshop.ToString());
        Assert.Equal(["https://192.168.1.5:5758/", "https://10.0.0.7:5758/", "https://anvil.local:5758/"], open.Phones.Select(one => one.ToString()));
        Assert.Equal("http://192.168.1.5:5759/", open.Certificate[0].ToString());
    }

    [Fact]
    public void Computer_without_a_network_has_no_addresses_for_phones()
    {
        var open = OpenAddresses.Of(["http://127.0.0.1:5757", "https://0.0.0.0:5758", "http://0.0.0.0:5759"], new([], "anvil"));

        Assert.Empty(open.Phones);
        Assert.Empty(open.Certificate);
    }
}
