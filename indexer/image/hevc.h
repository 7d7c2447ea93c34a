#pragma once
// HEVC, as HEICs hold it, by libavcodec: the same pixels as libde265 makes of it, in three quarters
// of the time. A picture of which a part is missing is refused as invalid input; one that it does
// not open at all, as an error of the decoder.

namespace quarterturn {

// Has libheif use it for all HEVC. Safe to call more than once, and from several threads.
void set_up_hevc();

}  // namespace quarterturn
