package org.copperbook.desk.grid;

import java.nio.charset.StandardCharsets;
import org.eclipse.swt.dnd.ByteArrayTransfer;
import org.eclipse.swt.dnd.TransferData;

/** Comma-separated values on the clipboard, under the names that spreadsheets on the three systems look for. */
public final class CsvTransfer extends ByteArrayTransfer {

    private static final CsvTransfer INSTANCE = new CsvTransfer();
    private static final String[] NAMES = {"text/csv", "Csv", "public.comma-separated-values-text"};
    private static final int[] IDS = java.util.Arrays.stream(NAMES).mapToInt(ByteArrayTransfer::registerType).toArray();

    private CsvTransfer() {
    }

    public static CsvTransfer getInstance() {
        return INSTANCE;
    }

    @Override
    protected int[] getTypeIds() {
        return IDS.clone();
    }

    @Override
    protected String[] getTypeNames() {
        return NAMES.clone();
    }

    @Override
    protected void javaToNative(Object object, TransferData data) {
        if (object instanceof String csv && isSupportedType(data)) {
            super.javaToNative(csv.getBytes(StandardCharsets.UTF_8), data);
        }
    }

    @Override
    protected Object nativeToJava(TransferData data) {
        return super.nativeToJava(data) instanceof byte[] bytes ? new String(bytes, StandardCharsets.UTF_8) : null;
    }
}
