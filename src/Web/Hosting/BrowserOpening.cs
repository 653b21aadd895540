using System.ComponentModel;
using System.Diagnostics;

namespace Nookwright.Web.Hosting;

/// <summary>Opens the person's browser at an address; a machine without one is no trouble, the address is printed anyway.</summary>
public static class BrowserOpening
{
    /// <summary>True when something was started.</summary>
    public static bool TryOpen(string address)
    {
        try
        {
            using var started = Process.Start(Opener(address));
            return started is not null;
        }
        catch (Exception trouble)
            when (trouble is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            return false;
        }
    }

    private static ProcessStartInfo Opener(string address) =>
        OperatingSystem.IsWindows() ? new(address) { UseShellExecute = true }
        : OperatingSystem.IsMacOS() ? Quiet("open", address)
        : Quiet("xdg-open", address);

    private static ProcessStartInfo Quiet(string program, string address) =>
        new(program, [address]) { RedirectStandardError = true, RedirectStandardOutput = true };
}
