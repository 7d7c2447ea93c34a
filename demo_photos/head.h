#pragma once

// A training head that can be photographed from anywhere. Building a `Head`
// takes a second or two (clay, roots, hair, how light falls into it); each
// picture of it then takes seconds at full size and well under one when small.
// Sides are always the client's own: azimuth +90 stands at her left.

#include "demo_photos/hair/hair_plan.h"
#include "demo_photos/light/shading.h"
#include "demo_photos/picture/backdrop.h"
#include "demo_photos/picture/canvas.h"
#include "demo_photos/shape/clay.h"

#include <memory>

#include <opencv2/core.hpp>

namespace quarterturn::demo {

/// One invented client: face, skin, hair.
struct Sitter {
    Face face;
    SkinTone tone;
    Vec3 brows{0.05F, 0.03F, 0.02F};
    HairPlan hair;
};

struct Lighting {
    float key_from_deg = -42.0F;  ///< sideways from the camera, negative is camera left
    float key_height_deg = 38.0F;
    float key_power = 1.0F;
    float warmth = 0.0F;  ///< -1 cool to 1 warm
    Backdrop backdrop;
};

/// Places in the picture, in pixels from its upper left corner.
struct Marks {
    cv::Point2f head_top;     ///< top of the hair on the head's axis; from above: the brow
    cv::Point2f head_bottom;  ///< chin, or the nape from behind; from above: back of the skull
    cv::Rect2f head_box;      ///< skull, face and pinned hair; no hanging hair
    bool face_visible = false;
};

struct Picture {
    cv::Mat linear;  ///< CV_32FC3, red first, linear light; see picture/develop.h
    Marks marks;
};

class Head {
  public:
    /// `fineness` 1 is for full-size photos; 0.3 will do for pictures 400 pixels high.
    /// `clay` saves time when several styles of one face are wanted: see shape/clay.h.
    explicit Head(const Sitter& sitter, float fineness = 1.0F,
                  std::shared_ptr<const Clay> clay = nullptr);
    ~Head();
    Head(const Head&) = delete;
    Head& operator=(const Head&) = delete;

    Picture photograph(const View& view, const Lighting& lighting, cv::Size size);

  private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

}  // namespace quarterturn::demo
