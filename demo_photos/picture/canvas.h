#pragma once

// A picture under way: colour, depth and what is seen, at twice the final size
// each way so that edges come out smooth. Depth is distance along the view.

#include "demo_photos/hair/strands.h"
#include "demo_photos/shape/mesh.h"

#include <functional>

#include <opencv2/core.hpp>

namespace quarterturn::demo {

/// Where the camera stands and looks.
struct View {
    float azimuth_deg = 0.0F;    ///< 0 before her face, +90 at her left side, 180 behind
    float elevation_deg = 5.0F;  ///< above ear height
    float distance_cm = 95.0F;
    float frame_cm = 46.0F;  ///< height of the frame at the target's distance
    Vec3 target{0.0F, -2.5F, 0.0F};
    float tilt_deg = 0.0F;  ///< camera rolled clockwise
};

class Camera {
  public:
    Camera(const View& view, int width, int height);

    struct Seen {
        float x;
        float y;
        float depth;
    };
    Seen project(Vec3 p) const {
        const Vec3 d = p - eye_;
        const float depth = dot(d, forward_);
        return {middle_x_ + focal_ * dot(d, right_) / depth,
                middle_y_ - focal_ * dot(d, up_) / depth, depth};
    }
    Vec3 eye() const { return eye_; }
    Vec3 right() const { return right_; }
    Vec3 up() const { return up_; }
    Vec3 forward() const { return forward_; }
    float focal() const { return focal_; }

  private:
    Vec3 eye_;
    Vec3 right_;
    Vec3 up_;
    Vec3 forward_;
    float focal_;
    float middle_x_;
    float middle_y_;
};

class Canvas {
  public:
    Canvas(int width, int height);

    void draw_depth(const Mesh& mesh, const Camera& camera, std::uint16_t mesh_number);
    using StrandShade =
        std::function<Vec3(std::uint32_t point, Vec3 along, const StrandLook& look, float t)>;
    /// `share` of the strands are drawn: far away fewer cover as well.
    void draw_strands(const StrandSet& set, const Camera& camera, const StrandShade& shade,
                      float share);

    /// Colours every pixel where a mesh is in front, interpolating its points' colours
    /// through `shade` (mesh number, triangle, weights of its three corners).
    using MeshShade =
        std::function<Vec3(std::uint16_t mesh, std::uint32_t triangle, float u, float v, float w)>;
    void colour_meshes(const std::vector<const Mesh*>& meshes, const Camera& camera,
                       const MeshShade& shade);

    /// Half-size linear picture over the backdrop (CV_32FC3, red first).
    cv::Mat resolve(const cv::Mat& backdrop) const;

    int width() const { return width_; }
    int height() const { return height_; }

  private:
    struct Pixel {
        float depth = 1e9F;
        std::uint32_t triangle = 0;
        std::uint16_t mesh = nothing;
    };
    static constexpr std::uint16_t nothing = 0xFFFF;
    static constexpr std::uint16_t strand = 0xFFFE;

    void draw_segment(Camera::Seen a, Camera::Seen b, Vec3 from, Vec3 to, float wide, bool stray);
    void put(int x, int y, float depth, Vec3 colour, float cover);

    int width_;
    int height_;
    std::vector<Pixel> pixels_;
    std::vector<Vec3> colours_;
    /// Stray hair over the backdrop: how much of it is covered.
    std::vector<float> veil_;
    std::vector<Vec3> veil_colour_;
};

}  // namespace quarterturn::demo
