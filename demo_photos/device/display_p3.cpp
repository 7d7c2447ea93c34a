#include "demo_photos/device/photo_file.h"

#include <memory>
#include <stdexcept>

#include <lcms2.h>

namespace quarterturn::demo {

std::string display_p3_profile() {
    // White and primaries as published for P3 with a D65 white; the curve is
    // the one of IEC 61966-2-1.
    const cmsCIExyY white{0.3127, 0.3290, 1.0};
    const cmsCIExyYTRIPLE primaries{{0.680, 0.320, 1.0}, {0.265, 0.690, 1.0}, {0.150, 0.060, 1.0}};
    const double steps[5] = {2.4, 1.0 / 1.055, 0.055 / 1.055, 1.0 / 12.92, 0.04045};
    cmsToneCurve* curve = cmsBuildParametricToneCurve(nullptr, 4, steps);
    cmsToneCurve* curves[3] = {curve, curve, curve};
    cmsHPROFILE profile = cmsCreateRGBProfile(&white, &primaries, curves);
    cmsFreeToneCurve(curve);
    if (profile == nullptr) {
        throw std::runtime_error("The Display P3 profile could not be built.");
    }
    cmsMLU* name = cmsMLUalloc(nullptr, 1);
    cmsMLUsetASCII(name, "en", "US", "Display P3");
    cmsWriteTag(profile, cmsSigProfileDescriptionTag, name);
    cmsMLUfree(name);
    cmsUInt32Number size = 0;
    cmsSaveProfileToMem(profile, nullptr, &size);
    std::string bytes(size, '\0');
    cmsSaveProfileToMem(profile, bytes.data(), &size);
    cmsCloseProfile(profile);
    // The writer stamps the hour; a fixed one keeps the photos the same every time.
    const std::string stamp{"\x07\xEA\x00\x01\x00\x01\x00\x00\x00\x00\x00\x00", 12};
    bytes.replace(24, 12, stamp);
    return bytes;
}

}  // namespace quarterturn::demo
