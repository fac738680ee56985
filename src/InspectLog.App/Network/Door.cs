using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace InspectLog.App.Network;

/// <summary>Where a request came in.</summary>
public enum Door
{
    /// <summary>HTTPS on the local network: for paired devices, and for those who want to become one.</summary>
    Network,

    /// <summary>HTTP on the loopback interface: somebody at the workshop's own computer.</summary>
    Workshop,

    /// <summary>HTTP on the local network: hands out the authority's certificate, and nothing else.</summary>
    Certificate,
}

/// <summary>Tells by which door a request came in.</summary>
public static class Doors
{
    /// <summary>The door; where none was noted, the one at which everybody has to show who they are.</summary>
    public static Door Of(HttpContext context) => context.Features.Get<DoorPassed>()?.Door ?? Door.Network;

    /// <summary>Notes the door of every connection. It is the listener that tells, not the address of the other side: that
    /// may be a program on this computer that passes on what comes from elsewhere.</summary>
    public static void Through(this ListenOptions listen, Door door)
    {
        var passed = new DoorPassed(door);
        listen.Use(next => connection =>
        {
            connection.Features.Set(passed);
            return next(connection);
        });
    }

    private sealed record DoorPassed(Door Door);
}
