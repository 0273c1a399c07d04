package rundlauf.web;

import io.javalin.config.JettyConfig;
import org.eclipse.jetty.http.HttpVersion;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import rundlauf.usecase.TlsIdentity;

/** Listens for TLS, and for nothing else. */
final class TlsConnector {
  private TlsConnector() {}

  static void on(JettyConfig jetty, String host, int port, TlsIdentity identity) {
    jetty.addConnector((server, config) -> of(server, config, host, port, identity));
  }

  private static ServerConnector of(
      Server server, HttpConfiguration config, String host, int port, TlsIdentity identity) {
    var factory = new SslContextFactory.Server();
    factory.setKeyStore(identity.keys());
    factory.setKeyStorePassword(identity.password());
    var http = new HttpConfiguration(config);
    http.addCustomizer(new SecureRequestCustomizer(false)); // a plain address has no name to match
    var connector =
        new ServerConnector(
            server,
            new SslConnectionFactory(factory, HttpVersion.HTTP_1_1.asString()),
            new HttpConnectionFactory(http));
    connector.setHost(host);
    connector.setPort(port);
    return connector;
  }
}
