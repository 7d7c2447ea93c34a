#include "demo_photos/picture/backdrop.h"

#include "demo_photos/shape/noise.h"

#include <opencv2/imgproc.hpp>

namespace quarterturn::demo {

cv::Mat paint_backdrop(const Backdrop& backdrop, const View& view, int width, int height) {
    // Painted small and enlarged: everything in it is blurred anyway.
    const int rows = 240;
    const int columns = rows * width / height;
    cv::Mat small(rows, columns, CV_32FC3);
    const float zoom = view.frame_cm / 46.0F;
    const float above = smoothstep(32.0F, 58.0F, view.elevation_deg);
    const float drift = 0.5F * std::sin(degrees(view.azimuth_deg) * 0.5F);
    struct Glow {
        float x, y, size;
        Vec3 colour;
    };
    Glow glows[5];
    for (std::uint32_t i = 0; i < 5; ++i) {
        const std::uint32_t n = backdrop.seed * 16U + i;
        glows[i] = {2.6F * hash_unit(n, 1) - 1.3F + drift, -0.7F + 1.0F * hash_unit(n, 2),
                    0.05F + 0.07F * hash_unit(n, 3),
                    lerp({0.55F, 0.42F, 0.26F}, {0.40F, 0.46F, 0.40F}, hash_unit(n, 4))};
    }
    for (int y = 0; y < rows; ++y) {
        for (int x = 0; x < columns; ++x) {
            const float u =
                (2.0F * (static_cast<float>(x) + 0.5F) / static_cast<float>(columns) - 1.0F) * zoom;
            const float v =
                (2.0F * (static_cast<float>(y) + 0.5F) / static_cast<float>(rows) - 1.0F) * zoom;
            Vec3 c = backdrop.wall * (1.10F - 0.20F * v);
            // The window's light on the wall.
            const float wx = u - backdrop.window_at - drift * 0.4F;
            c += backdrop.window *
                 (0.42F * std::exp(-wx * wx * 1.7F - (v + 0.35F) * (v + 0.35F) * 0.8F));
            const float pane = smoothstep(0.34F, 0.20F, std::abs(wx + 0.25F)) *
                               smoothstep(0.45F, 0.3F, std::abs(v + 0.65F));
            c = lerp(c, backdrop.window, 0.5F * pane);
            // A shelf with things on it, far off.
            const float shelf =
                smoothstep(0.05F, 0.0F, std::abs(v - 0.02F)) *
                smoothstep(0.1F, 0.45F, u * (backdrop.window_at < 0 ? 1.0F : -1.0F) - drift);
            c = lerp(c, backdrop.floor * 1.1F, 0.28F * shelf);
            for (const Glow& g : glows) {
                const float far =
                    std::sqrt((u - g.x) * (u - g.x) * 0.5625F + (v - g.y) * (v - g.y));
                c = lerp(c, c * 0.6F + g.colour * 0.6F,
                         0.42F * smoothstep(g.size, g.size * 0.55F, far));
            }
            // A table top low in the frame.
            const float table = smoothstep(0.80F, 0.94F, v);
            c = lerp(c, backdrop.floor * (1.5F - 0.4F * v), 0.75F * table);
            const Vec3 boards =
                backdrop.floor *
                (1.15F + 0.10F * noise({u * 5.0F, v * 0.6F, 1.0F}) +
                 0.25F * (0.4F - u * (backdrop.window_at < 0 ? 1.0F : -1.0F) * 0.4F - v * 0.2F));
            c = lerp(c, boards * 1.25F, above);
            small.at<cv::Vec3f>(y, x) = {c.x, c.y, c.z};
        }
    }
    cv::Mat large;
    cv::resize(small, large, {width, height}, 0, 0, cv::INTER_CUBIC);
    return large;
}

}  // namespace quarterturn::demo
