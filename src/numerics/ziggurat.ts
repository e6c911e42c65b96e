import { portableExp, portableLog } from './portableElementary.ts';

/**
 * The ziggurat of the standard normal density exp(−x²/2): 256 horizontal layers of equal area, the lowest one with the tail.
 *
 * Source: G. Marsaglia, W. W. Tsang, "The ziggurat method for generating random variables", Journal of Statistical Software
 * 5(8), 2000: start of the tail and area for 256 layers; digits recomputed from the condition that the layers close at the
 * peak (see the test).
 */
export const LAYERS = 256;
/** Where the tail begins. */
export const TAIL_START = 3.654152885361009;
/** Area of each layer, tail included in the lowest. */
export const LAYER_AREA = 0.004928673233974655;

/** Right edge of layer i: edge[0] is the lowest layer's width as if it were a rectangle, edge[1] the tail's start, edge[256] = 0. */
export const layerEdge = new Float64Array(LAYERS + 1);
/** exp(−edge²/2). */
export const layerHeight = new Float64Array(LAYERS + 1);

fillLayers();

function fillLayers(): void {
  layerHeight[1] = portableExp(-0.5 * TAIL_START * TAIL_START);
  layerEdge[0] = LAYER_AREA / layerHeight[1];
  layerEdge[1] = TAIL_START;
  for (let i = 2; i < LAYERS; i++) {
    layerHeight[i] = layerHeight[i - 1] + LAYER_AREA / layerEdge[i - 1];
    layerEdge[i] = Math.sqrt(-2 * portableLog(layerHeight[i]));
  }
  layerHeight[LAYERS] = 1;
  layerEdge[LAYERS] = 0;
  layerHeight[0] = 0;
}
