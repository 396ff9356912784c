package org.tetherline.app;

import com.getcapacitor.BridgeActivity;

public class MainActivity extends BridgeActivity {}
