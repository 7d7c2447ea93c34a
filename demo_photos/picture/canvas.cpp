#include "demo_photos/picture/canvas.h"

#include "demo_photos/shape/noise.h"

namespace quarterturn::demo {

Camera::Camera(const View& view, int width, int height) {
    const float turn = degrees(view.azimuth_deg);
    const float up = degrees(view.elevation_deg);
    const Vec3 back{std::sin(turn) * std::cos(up), std::sin(up), std::cos(turn) * std::cos(up)};
    eye_ = view.target + back * view.distance_cm;
    forward_ = -back;
    const Vec3 level = normalize(cross(forward_, {0.0F, 1.0F, 0.0F}));
    const Vec3 raised = cross(level, forward_);
    const float tilt = degrees(view.tilt_deg);
    right_ = level * std::cos(tilt) - raised * std::sin(tilt);
    up_ = raised * std::cos(tilt) + level * std::sin(tilt);
    focal_ = static_cast<float>(height) * view.distance_cm / view.frame_cm;
    middle_x_ = static_cast<float>(width) * 0.5F;
    middle_y_ = static_cast<float>(height) * 0.5F;
}

Canvas::Canvas(int width, int height)
    : width_(width),
      height_(height),
      pixels_(static_cast<std::size_t>(width) * static_cast<std::size_t>(height)),
      colours_(pixels_.size()),
      veil_(pixels_.size(), 0.0F),
      veil_colour_(pixels_.size()) {}

namespace {

struct Corner {
    float x;
    float y;
};

float area_of(Corner a, Corner b, Corner c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

}  // namespace

void Canvas::draw_depth(const Mesh& mesh, const Camera& camera, std::uint16_t mesh_number) {
    std::vector<Camera::Seen> seen;
    seen.reserve(mesh.points.size());
    for (const Vec3& p : mesh.points) {
        seen.push_back(camera.project(p));
    }
    for (std::uint32_t t = 0; t < mesh.triangles.size(); ++t) {
        const auto& c = mesh.triangles[t];
        const auto& a = seen[c[0]];
        const auto& b = seen[c[1]];
        const auto& d = seen[c[2]];
        if (a.depth < 2.0F || b.depth < 2.0F || d.depth < 2.0F) {
            continue;
        }
        const float area = area_of({a.x, a.y}, {b.x, b.y}, {d.x, d.y});
        if (std::abs(area) < 1e-9F) {
            continue;
        }
        const int x0 = std::max(0, static_cast<int>(std::floor(std::min({a.x, b.x, d.x}))));
        const int x1 = std::min(width_ - 1, static_cast<int>(std::ceil(std::max({a.x, b.x, d.x}))));
        const int y0 = std::max(0, static_cast<int>(std::floor(std::min({a.y, b.y, d.y}))));
        const int y1 =
            std::min(height_ - 1, static_cast<int>(std::ceil(std::max({a.y, b.y, d.y}))));
        for (int y = y0; y <= y1; ++y) {
            for (int x = x0; x <= x1; ++x) {
                const Corner p{static_cast<float>(x) + 0.5F, static_cast<float>(y) + 0.5F};
                const float u = area_of({b.x, b.y}, {d.x, d.y}, p) / area;
                const float v = area_of({d.x, d.y}, {a.x, a.y}, p) / area;
                const float w = 1.0F - u - v;
                if (u < 0.0F || v < 0.0F || w < 0.0F) {
                    continue;
                }
                const float depth = 1.0F / (u / a.depth + v / b.depth + w / d.depth);
                Pixel& pixel =
                    pixels_[static_cast<std::size_t>(y) * static_cast<std::size_t>(width_) +
                            static_cast<std::size_t>(x)];
                if (depth < pixel.depth) {
                    pixel = {depth, t, mesh_number};
                }
            }
        }
    }
}

void Canvas::colour_meshes(const std::vector<const Mesh*>& meshes, const Camera& camera,
                           const MeshShade& shade) {
    const auto colour_at = [&](const Pixel& pixel, float x, float y) {
        const Mesh& mesh = *meshes[pixel.mesh];
        const auto& c = mesh.triangles[pixel.triangle];
        const auto a = camera.project(mesh.points[c[0]]);
        const auto b = camera.project(mesh.points[c[1]]);
        const auto d = camera.project(mesh.points[c[2]]);
        const Corner p{x, y};
        const float area = area_of({a.x, a.y}, {b.x, b.y}, {d.x, d.y});
        const float u = area_of({b.x, b.y}, {d.x, d.y}, p) / area / a.depth;
        const float v = area_of({d.x, d.y}, {a.x, a.y}, p) / area / b.depth;
        const float w = area_of({a.x, a.y}, {b.x, b.y}, p) / area / d.depth;
        const float sum = u + v + w;
        return shade(pixel.mesh, pixel.triangle, u / sum, v / sum, w / sum);
    };
    // Smooth skin and cloth are shaded once for four pixels that become one.
    for (int y = 0; y + 1 < height_; y += 2) {
        for (int x = 0; x + 1 < width_; x += 2) {
            const std::size_t row = static_cast<std::size_t>(width_);
            const std::size_t at = static_cast<std::size_t>(y) * row + static_cast<std::size_t>(x);
            const std::size_t four[] = {at, at + 1, at + row, at + row + 1};
            const Pixel& first = pixels_[at];
            bool alike = first.mesh < strand && (meshes[first.mesh]->material == Material::skin ||
                                                 meshes[first.mesh]->material == Material::cape);
            for (const std::size_t i : four) {
                alike = alike && pixels_[i].mesh == first.mesh &&
                        std::abs(pixels_[i].depth - first.depth) < 0.12F;
            }
            if (alike) {
                const Vec3 colour =
                    colour_at(first, static_cast<float>(x) + 1.0F, static_cast<float>(y) + 1.0F);
                for (const std::size_t i : four) {
                    colours_[i] = colour;
                }
                continue;
            }
            for (int k = 0; k < 4; ++k) {
                const Pixel& pixel = pixels_[four[k]];
                if (pixel.mesh < strand) {
                    colours_[four[k]] = colour_at(pixel, static_cast<float>(x + k % 2) + 0.5F,
                                                  static_cast<float>(y + k / 2) + 0.5F);
                }
            }
        }
    }
}

void Canvas::put(int x, int y, float depth, Vec3 colour, float cover) {
    if (x < 0 || y < 0 || x >= width_ || y >= height_) {
        return;
    }
    const std::size_t at = static_cast<std::size_t>(y) * static_cast<std::size_t>(width_) +
                           static_cast<std::size_t>(x);
    Pixel& pixel = pixels_[at];
    if (depth >= pixel.depth) {
        return;
    }
    if (cover >= 1.0F) {
        pixel.depth = depth;
        pixel.mesh = strand;
        colours_[at] = colour;
        return;
    }
    veil_colour_[at] = veil_colour_[at] * (1.0F - cover) + colour * cover;
    veil_[at] = veil_[at] * (1.0F - cover) + cover;
}

void Canvas::draw_segment(Camera::Seen a, Camera::Seen b, Vec3 from, Vec3 to, float wide,
                          bool stray) {
    const float dx = b.x - a.x;
    const float dy = b.y - a.y;
    const bool steep = std::abs(dy) > std::abs(dx);
    const float run = std::max(std::abs(dx), std::abs(dy));
    if (run > 6000.0F) {
        return;
    }
    const int steps = std::max(1, static_cast<int>(std::ceil(run)));
    // A line along one axis is widened along the other.
    const float slant = run > 1e-3F ? std::sqrt(dx * dx + dy * dy) / run : 1.0F;
    const int span = std::max(1, static_cast<int>(std::lround(wide * slant)));
    const float cover = stray ? std::clamp(wide, 0.18F, 0.75F) : 1.0F;
    for (int i = 0; i < steps; ++i) {
        const float t = (static_cast<float>(i) + 0.5F) / static_cast<float>(steps);
        const float x = a.x + dx * t;
        const float y = a.y + dy * t;
        const float depth = a.depth + (b.depth - a.depth) * t;
        const Vec3 colour = lerp(from, to, t);
        const float first = -0.5F * static_cast<float>(span - 1);
        for (int k = 0; k < span; ++k) {
            const float off = first + static_cast<float>(k);
            // The middle of a wide strand stands nearer and is a little lighter.
            const float rounded =
                span > 1 ? 1.0F - 0.28F * std::abs(2.0F * off / static_cast<float>(span)) : 1.0F;
            put(static_cast<int>(std::floor(steep ? x + off : x)),
                static_cast<int>(std::floor(steep ? y : y + off)), depth, colour * rounded, cover);
        }
    }
}

void Canvas::draw_strands(const StrandSet& set, const Camera& camera, const StrandShade& shade,
                          float share) {
    // Solid hair first: strays must know what lies behind them.
    for (const bool stray : {false, true}) {
        for (std::size_t s = 0; s < set.count(); ++s) {
            const StrandLook& look = set.looks[s];
            if (look.stray != stray || hash_unit(static_cast<std::uint32_t>(s), 77) > share) {
                continue;
            }
            const std::uint32_t first = set.starts[s];
            const std::uint32_t last = set.starts[s + 1];
            Camera::Seen before{};
            Vec3 colour_before{};
            for (std::uint32_t i = first; i < last; ++i) {
                const Vec3 p = set.points[i];
                const Vec3 along = normalize(set.points[std::min(i + 1, last - 1)] -
                                             set.points[i > first ? i - 1 : i]);
                const auto seen = camera.project(p);
                if (seen.depth < 2.0F) {
                    break;
                }
                const float t =
                    static_cast<float>(i - first) / static_cast<float>(last - first - 1);
                const Vec3 colour = shade(i, along, look, t);
                if (i > first) {
                    const float taper =
                        stray ? 1.0F - 0.6F * t : 1.0F - 0.5F * smoothstep(0.75F, 1.0F, t);
                    draw_segment(before, seen, colour_before, colour,
                                 look.width * taper * camera.focal() / seen.depth, stray);
                }
                before = seen;
                colour_before = colour;
            }
        }
    }
}

cv::Mat Canvas::resolve(const cv::Mat& backdrop) const {
    cv::Mat out(height_ / 2, width_ / 2, CV_32FC3);
    for (int y = 0; y < out.rows; ++y) {
        for (int x = 0; x < out.cols; ++x) {
            const cv::Vec3f behind = backdrop.at<cv::Vec3f>(y, x);
            Vec3 sum{};
            for (int k = 0; k < 4; ++k) {
                const std::size_t at =
                    static_cast<std::size_t>(2 * y + k / 2) * static_cast<std::size_t>(width_) +
                    static_cast<std::size_t>(2 * x + k % 2);
                const Vec3 base = pixels_[at].mesh == nothing
                                      ? Vec3{behind[0], behind[1], behind[2]}
                                      : colours_[at];
                sum += base * (1.0F - veil_[at]) + veil_colour_[at];
            }
            out.at<cv::Vec3f>(y, x) = {sum.x * 0.25F, sum.y * 0.25F, sum.z * 0.25F};
        }
    }
    return out;
}

}  // namespace quarterturn::demo
