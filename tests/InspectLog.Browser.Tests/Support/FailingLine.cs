using System.Net;
using System.Net.Sockets;

namespace InspectLog.Browser.Tests.Support;

/// <summary>The network between phone and workshop: it passes bytes on, and breaks off where it is told to, in the middle of
/// a request or of an answer.</summary>
internal sealed class FailingLine : IDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Parse("127.0.0.2"), 0);
    private readonly CancellationTokenSource _over = new();
    private readonly Lock _lock = new();
    private readonly List<Socket> _open = [];
    private long _up = long.MaxValue;
    private long _down = long.MaxValue;

    /// <param name="port">Port of the program behind it.</param>
    public FailingLine(int port)
    {
        _listener.Start();
        _ = AcceptAsync(port);
    }

    /// <summary>The address a phone uses.</summary>
    public Uri Address => new($"https://127.0.0.2:{((IPEndPoint)_listener.LocalEndpoint).Port}/");

    /// <summary>Breaks off after so many bytes more towards the program, or so many from it, and stays broken.</summary>
    public void BreakAfter(long up, long down)
    {
        Interlocked.Exchange(ref _up, up);
        Interlocked.Exchange(ref _down, down);
    }

    /// <summary>Passes everything on again, by new connections.</summary>
    public void Mend()
    {
        BreakAfter(long.MaxValue, long.MaxValue);
        CutAll();
    }

    public void Dispose()
    {
        _over.Cancel();
        _listener.Dispose();
        CutAll();
        _over.Dispose();
    }

    private async Task AcceptAsync(int port)
    {
        try
        {
            while (true)
            {
                var near = await _listener.AcceptSocketAsync(_over.Token);
                _ = PassAsync(near, port);
            }
        }
        catch (Exception end) when (end is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // The test is over.
        }
    }

    private async Task PassAsync(Socket near, int port)
    {
        using var far = new Socket(SocketType.Stream, ProtocolType.Tcp);
        using (near)
        {
            try
            {
                if (Volatile.Read(ref _up) <= 0 || Volatile.Read(ref _down) <= 0)
                {
                    return;
                }

                await far.ConnectAsync("127.0.0.2", port);
                lock (_lock)
                {
                    _open.Add(near);
                    _open.Add(far);
                }

                await Task.WhenAny(CopyAsync(near, far, isUp: true), CopyAsync(far, near, isUp: false));
            }
            catch (Exception broken) when (broken is SocketException or ObjectDisposedException)
            {
                // One side is gone; the other is closed with it.
            }
        }
    }

    private async Task CopyAsync(Socket from, Socket to, bool isUp)
    {
        var bytes = new byte[16 * 1024];
        try
        {
            for (var read = 1; read > 0;)
            {
                read = await from.ReceiveAsync(bytes);
                var left = isUp ? Interlocked.Add(ref _up, -read) : Interlocked.Add(ref _down, -read);
                await to.SendAsync(bytes.AsMemory(0, left < 0 ? (int)Math.Max(0, read + left) : read));
                if (left <= 0)
                {
                    CutAll();
                }
            }
        }
        catch (Exception broken) when (broken is SocketException or ObjectDisposedException)
        {
            // Nothing more can be passed on.
        }
    }

    private void CutAll()
    {
        lock (_lock)
        {
            _open.ForEach(socket => socket.Dispose());
            _open.Clear();
        }
    }
}
