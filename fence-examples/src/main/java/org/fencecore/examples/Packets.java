package org.fencecore.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.fencecore.FencePlan;
import org.fencecore.packet.BuildPacket;

/** What every example does with its plan: print the sheet, and write the packet under the build folder. */
final class Packets {

    private Packets() {}

    static void printAndWrite(FencePlan plan, String name) throws IOException {
        BuildPacket packet = BuildPacket.of(plan);
        System.out.print(packet.sheet().toText());
        Path folder = Path.of(System.getProperty("fence.packets", "target")).resolve(name);
        Files.createDirectories(folder);
        Map<String, String> files = packet.files();
        for (Map.Entry<String, String> file : files.entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
        System.out.println("\n" + files.size() + " files of the packet are in the folder target/" + name);
    }
}
