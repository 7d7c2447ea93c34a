#include "demo_photos/picture/still_life.h"

#include "demo_photos/light/shading.h"
#include "demo_photos/picture/accessory.h"
#include "demo_photos/picture/canvas.h"

#include <opencv2/imgproc.hpp>

namespace quarterturn::demo {

namespace {

cv::Mat paint_table(cv::Size size) {
    cv::Mat table(size, CV_32FC3);
    for (int y = 0; y < size.height; ++y) {
        for (int x = 0; x < size.width; ++x) {
            const float u = static_cast<float>(x) / static_cast<float>(size.height);
            const float v = static_cast<float>(y) / static_cast<float>(size.height);
            const float rings =
                noise({u * 9.0F + 0.6F * noise({v * 3.0F, u * 2.0F, 7.0F}), v * 0.9F, 2.0F});
            const float grain = 0.5F * noise({u * 120.0F, v * 5.0F, 3.0F}) +
                                0.5F * noise({u * 40.0F, v * 2.0F, 5.0F});
            const float light = 1.15F - 0.45F * u - 0.30F * v;
            const Vec3 wood =
                Vec3{0.36F, 0.25F, 0.165F} * (light * (1.0F + 0.12F * rings + 0.07F * grain));
            table.at<cv::Vec3f>(y, x) = {wood.x, wood.y, wood.z};
        }
    }
    return table;
}

}  // namespace

cv::Mat paint_still_life(cv::Size size) {
    View view;
    view.azimuth_deg = 20.0F;
    view.elevation_deg = 52.0F;
    view.distance_cm = 45.0F;
    view.frame_cm = 22.0F;
    view.target = {0.0F, 0.0F, 0.0F};
    const auto parts = make_leaf_comb({0.0F, 0.6F, 0.0F}, normalize({1.0F, 0.0F, -0.35F}),
                                      {0.0F, 1.0F, 0.0F}, 1.15F, false);
    const Room room{{normalize({-0.7F, 0.75F, -0.3F}), {1.5F, 1.45F, 1.35F}},
                    {normalize({0.7F, 0.5F, 0.5F}), {0.3F, 0.32F, 0.35F}},
                    {normalize({0.2F, 0.4F, -0.9F}), {0.7F, 0.66F, 0.6F}},
                    {0.45F, 0.45F, 0.46F},
                    {0.22F, 0.16F, 0.11F}};
    Canvas canvas(size.width * 2, size.height * 2);
    const Camera camera(view, canvas.width(), canvas.height());
    std::vector<const Mesh*> meshes;
    cv::Mat shadow = cv::Mat::zeros(size, CV_32F);
    const Vec3 slope = room.key.towards / room.key.towards.y;
    for (const Mesh& part : parts) {
        canvas.draw_depth(part, camera, static_cast<std::uint16_t>(meshes.size()));
        meshes.push_back(&part);
        // The shadow is the comb pushed down the light onto the table.
        for (const auto& t : part.triangles) {
            std::vector<cv::Point> corners;
            for (const auto index : t) {
                const Vec3 p = part.points[index];
                const auto s = camera.project(p - slope * p.y);
                corners.emplace_back(static_cast<int>(s.x * 0.5F), static_cast<int>(s.y * 0.5F));
            }
            cv::fillConvexPoly(shadow, corners, cv::Scalar(1.0));
        }
    }
    cv::GaussianBlur(shadow, shadow, {0, 0}, size.height * 0.004 + 0.1);
    cv::Mat table = paint_table(size);
    for (int y = 0; y < size.height; ++y) {
        for (int x = 0; x < size.width; ++x) {
            table.at<cv::Vec3f>(y, x) *= 1.0F - 0.62F * std::min(1.0F, shadow.at<float>(y, x));
        }
    }
    canvas.colour_meshes(
        meshes, camera,
        [&](std::uint16_t number, std::uint32_t triangle, float u, float v, float w) {
            const Mesh& mesh = *meshes[number];
            const auto& c = mesh.triangles[triangle];
            SurfacePoint at{
                mesh.points[c[0]] * u + mesh.points[c[1]] * v + mesh.points[c[2]] * w,
                normalize(mesh.normals[c[0]] * u + mesh.normals[c[1]] * v + mesh.normals[c[2]] * w),
                mesh.tints[c[0]], mesh.material};
            const Vec3 to_eye = normalize(camera.eye() - at.point);
            if (mesh.material == Material::gold && dot(at.normal, to_eye) < 0.0F) {
                at.normal = -at.normal;
            }
            return shade_surface(at, to_eye, room, {}, {}, 9.0F);
        });
    return canvas.resolve(table);
}

}  // namespace quarterturn::demo
