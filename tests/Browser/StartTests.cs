using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace Nookwright.Browser;

/// <summary>Starting the program with what it cannot take is told in one line, and ends with 2.</summary>
public sealed class StartTests
{
    [Fact]
    public async Task A_taken_port_is_told_with_what_to_do()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var port = ((IPEndPoint)taken.LocalEndpoint).Port;
        var (exit, errors) = await Start("--port", $"{port}", "--folder", Checkout.Demos, "--no-browser");
        Assert.Equal(2, exit);
        Assert.StartsWith($"Port {port} on 127.0.0.1 is taken", Assert.Single(errors), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--port", "99999", "from 0 to 65535")]
    [InlineData("--folder", "no-such-folder", "no-such-folder")]
    public async Task An_option_that_cannot_be_taken_is_told(string option, string value, string says)
    {
        var (exit, errors) = await Start(option, value, "--no-browser");
        Assert.Equal(2, exit);
        Assert.Contains(says, Assert.Single(errors), StringComparison.Ordinal);
    }

    private static async Task<(int Exit, string[] Errors)> Start(params string[] arguments)
    {
        var stop = TestContext.Current.CancellationToken;
        using var process = Process.Start(
            new ProcessStartInfo("dotnet", [Checkout.WebProgram, .. arguments]) { RedirectStandardError = true }
        )!;
        var errors = await process.StandardError.ReadToEndAsync(stop);
        await process.WaitForExitAsync(stop);
        return (process.ExitCode, errors.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }
}
